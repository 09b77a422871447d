import { existsSync, readFileSync } from 'node:fs'
import { openDB } from 'idb'
import { beforeEach, expect, test } from 'vitest'
import { openDatabase } from '../../src/storage/database'
import { openImports } from '../../src/storage/imports'
import { freshBrowser, good, opened } from './setup'

/** A database as an earlier version left it, frozen: its stores and their records, typed arrays by their name. */
interface Frozen {
  readonly version: number
  readonly stores: Record<string, { readonly keyPath: string | string[]; readonly records: readonly unknown[] }>
}

const fileOf = (version: number) => new URL(`databases/${version}.json`, import.meta.url)

const ARRAYS: Record<string, (from: number[]) => unknown> = {
  Float64Array: (from) => Float64Array.from(from),
  Uint8Array: (from) => Uint8Array.from(from),
}

function thawed(value: unknown): unknown {
  if (typeof value !== 'object' || value === null) return value
  if (Array.isArray(value)) return value.map(thawed)
  const [only, ...others] = Object.entries(value)
  const make = only && others.length === 0 ? ARRAYS[only[0]] : undefined
  if (only && make) return make(only[1] as number[])
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, thawed(inner)]))
}

async function put(version: number): Promise<void> {
  const { stores } = JSON.parse(readFileSync(fileOf(version), 'utf8')) as Frozen
  const database = await openDB('basinbook', version, {
    upgrade(made) {
      for (const [name, { keyPath }] of Object.entries(stores)) made.createObjectStore(name, { keyPath })
    },
  })
  for (const [name, { records }] of Object.entries(stores))
    for (const record of records) await database.put(name, thawed(record))
  database.close()
}

beforeEach(freshBrowser)

test('every earlier version of the database has a frozen one to be opened', async () => {
  const today = good(await openDatabase('basinbook'))
  for (let version = 1; version < today.version; version++) expect(existsSync(fileOf(version)), `${version}`).toBe(true)
  today.close()
})

test.each([1, 2])('a database of version %i opens with its notebooks and takes edits and states', async (version) => {
  await put(version)
  const store = await opened()
  expect(good(await store.list())).toMatchObject([
    { id: 'heron', name: 'Test pool', changed: 1_780_000_000_000, head: 2 },
  ])
  const notebook = good(await store.load('heron'))
  expect(notebook).toMatchObject({ version: 3, name: 'Test pool', units: { temperature: '°F' } })
  expect(notebook.cells['first/ph']).toEqual({ kind: 'value', entered: '7.2', unit: 'pH', canonical: 7.2 })
  good(await store.append('heron', [{ type: 'change_notebook', set: { note: 'still here' } }]))
  const again = await opened()
  expect(good(await again.load('heron'))).toEqual({ ...notebook, note: 'still here' })
  expect(good(await again.states('heron'))).toEqual([{ seq: 2, at: 1_780_000_000_000 }])
  expect(good(await again.state('heron', 2))).toEqual(notebook)
})

test('one of version 2 keeps its lab files and mappings, and has none of the files themselves', async () => {
  await put(2)
  const store = good(await openImports<{ id: string; name: string }, unknown>())
  expect(good(await store.list())).toEqual([{ id: 'spring', name: 'spring.csv' }])
  expect(good(await store.body('spring'))).toEqual({
    count: 2,
    values: Float64Array.of(7.4, 7.6),
    states: Uint8Array.of(1, 2),
  })
  expect(good(await store.file('spring'))).toBeNull()
  expect(good(await store.mappings())).toMatchObject([{ name: 'Bench at Nowhere' }])
})
