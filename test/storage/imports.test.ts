import { openDB } from 'idb'
import { beforeEach, describe, expect, test } from 'vitest'
import { toFile } from '../../src/notebook/file'
import { type Imports, openImports } from '../../src/storage/imports'
import { EMPTY } from '../notebook/samples'
import { freshBrowser, good, opened } from './setup'

interface Head {
  readonly id: string
  readonly name: string
}
interface Body {
  readonly values: Float64Array
}

async function imports(now?: () => number): Promise<Imports<Head, Body>> {
  return good(await openImports<Head, Body>('basinbook', now))
}

beforeEach(freshBrowser)

describe('lab files that are kept', () => {
  test('are there again in another tab, the last first, columns as they were', async () => {
    let time = 0
    const store = await imports(() => ++time)
    good(await store.put({ id: 'a', name: 'spring.csv' }, { values: Float64Array.of(7.4, Number.NaN) }))
    good(await store.put({ id: 'b', name: 'summer.csv' }, { values: Float64Array.of(7.6) }))
    const other = await imports()
    expect(good(await other.list())).toEqual([
      { id: 'b', name: 'summer.csv' },
      { id: 'a', name: 'spring.csv' },
    ])
    expect(good(await other.body('a'))).toEqual({ values: Float64Array.of(7.4, Number.NaN) })
  })

  test('are written once: what is there is not written over', async () => {
    const store = await imports()
    good(await store.put({ id: 'a', name: 'spring.csv' }, { values: Float64Array.of(7.4) }))
    expect(await store.put({ id: 'a', name: 'other.csv' }, { values: Float64Array.of(1) })).toMatchObject({
      code: 'import_kept_already',
    })
    expect(good(await store.list())).toEqual([{ id: 'a', name: 'spring.csv' }])
    expect(good(await store.body('a'))).toEqual({ values: Float64Array.of(7.4) })
  })

  test('that cannot be written whole leave nothing', async () => {
    const store = await imports()
    const body = { values: Float64Array.of(1), no: () => 1 }
    expect(await store.put({ id: 'a', name: 'spring.csv' }, body)).toMatchObject({ code: 'storage_failed' })
    expect(good(await store.list())).toEqual([])
    expect(await store.body('a')).toMatchObject({ code: 'import_not_kept' })
  })

  test('go with their columns', async () => {
    const store = await imports()
    good(await store.put({ id: 'a', name: 'spring.csv' }, { values: Float64Array.of(1) }))
    good(await store.remove('a'))
    expect(good(await store.list())).toEqual([])
    expect(await store.body('a')).toMatchObject({ code: 'import_not_kept' })
  })

  test('have mappings by name, the last kept last', async () => {
    let time = 0
    const store = await imports(() => ++time)
    good(await store.putMapping('Bench at Nowhere', '{"a":1}'))
    good(await store.putMapping('Tarnabout', '{"b":1}'))
    good(await store.putMapping('Bench at Nowhere', '{"a":2}'))
    expect(good(await store.mappings())).toEqual([
      { name: 'Tarnabout', kept: 2, text: '{"b":1}' },
      { name: 'Bench at Nowhere', kept: 3, text: '{"a":2}' },
    ])
    good(await store.removeMapping('Tarnabout'))
    expect(good(await store.mappings())).toHaveLength(1)
  })
})

test('a database of the first version keeps its notebooks and gains room for lab files', async () => {
  const first = await openDB('basinbook', 1, {
    upgrade(database) {
      database.createObjectStore('notebooks', { keyPath: 'id' })
      database.createObjectStore('log', { keyPath: ['notebook', 'seq'] })
      database.createObjectStore('snapshots', { keyPath: ['notebook', 'seq'] })
    },
  })
  await first.put('notebooks', { id: 'book', name: 'Test pool', changed: 1, head: 0, snapshot: 0 })
  await first.put('snapshots', { notebook: 'book', seq: 0, text: toFile(EMPTY) })
  first.close()
  const store = await imports()
  good(await store.put({ id: 'a', name: 'spring.csv' }, { values: Float64Array.of(7.4) }))
  expect(good(await (await opened()).load('book'))).toEqual(EMPTY)
  expect(good(await store.list())).toHaveLength(1)
})
