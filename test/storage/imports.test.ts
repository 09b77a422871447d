import { openDB } from 'idb'
import { beforeEach, describe, expect, test } from 'vitest'
import { toFile } from '../../src/notebook/toFile'
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

const FILE = new Blob(['pH\r\n7,4\r\n'])

beforeEach(freshBrowser)

describe('lab files that are kept', () => {
  test('are there again in another tab, the last first, columns as they were', async () => {
    let time = 0
    const store = await imports(() => ++time)
    good(await store.put({ id: 'a', name: 'spring.csv' }, { values: Float64Array.of(7.4, Number.NaN) }, FILE))
    good(await store.put({ id: 'b', name: 'summer.csv' }, { values: Float64Array.of(7.6) }, FILE))
    const other = await imports()
    expect(good(await other.list())).toEqual([
      { id: 'b', name: 'summer.csv' },
      { id: 'a', name: 'spring.csv' },
    ])
    expect(good(await other.body('a'))).toEqual({ values: Float64Array.of(7.4, Number.NaN) })
  })

  test('are written once: what is there is not written over', async () => {
    const store = await imports()
    good(await store.put({ id: 'a', name: 'spring.csv' }, { values: Float64Array.of(7.4) }, FILE))
    expect(await store.put({ id: 'a', name: 'other.csv' }, { values: Float64Array.of(1) }, FILE)).toMatchObject({
      code: 'import_kept_already',
    })
    expect(good(await store.list())).toEqual([{ id: 'a', name: 'spring.csv' }])
    expect(good(await store.body('a'))).toEqual({ values: Float64Array.of(7.4) })
  })

  test('that cannot be written whole leave nothing', async () => {
    const store = await imports()
    const body = { values: Float64Array.of(1), no: () => 1 }
    expect(await store.put({ id: 'a', name: 'spring.csv' }, body, FILE)).toMatchObject({ code: 'storage_failed' })
    expect(good(await store.list())).toEqual([])
    expect(await store.body('a')).toMatchObject({ code: 'import_not_kept' })
  })

  test('are there byte for byte; one of a time before files were kept says so', async () => {
    const store = await imports()
    good(await store.put({ id: 'a', name: 'spring.csv' }, { values: Float64Array.of(1) }, FILE))
    const file = good(await store.file('a'))
    expect(await file?.text()).toBe('pH\r\n7,4\r\n')
    expect(await store.file('b')).toBeNull()
    good(await store.remove('a'))
    expect(await store.file('a')).toBeNull()
  })

  test('go with their columns', async () => {
    const store = await imports()
    good(await store.put({ id: 'a', name: 'spring.csv' }, { values: Float64Array.of(1) }, FILE))
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

test.each([1, 2])('a database of version %i keeps what it has and gains room for what is new', async (version) => {
  const old = await openDB('basinbook', version, {
    upgrade(database) {
      database.createObjectStore('notebooks', { keyPath: 'id' })
      database.createObjectStore('log', { keyPath: ['notebook', 'seq'] })
      database.createObjectStore('snapshots', { keyPath: ['notebook', 'seq'] })
      if (version < 2) return
      database.createObjectStore('imports', { keyPath: 'id' })
      database.createObjectStore('import_columns', { keyPath: 'id' })
      database.createObjectStore('mappings', { keyPath: 'name' })
    },
  })
  await old.put('notebooks', { id: 'book', name: 'Test pool', changed: 1, head: 0, snapshot: 0 })
  await old.put('snapshots', { notebook: 'book', seq: 0, text: toFile(EMPTY) })
  if (version === 2) {
    await old.put('imports', { id: 'old', kept: 1, head: { id: 'old', name: 'winter.csv' } })
    await old.put('import_columns', { id: 'old', body: { values: Float64Array.of(7.2) } })
  }
  old.close()
  const store = await imports()
  good(await store.put({ id: 'a', name: 'spring.csv' }, { values: Float64Array.of(7.4) }, FILE))
  expect(good(await (await opened()).load('book'))).toEqual(EMPTY)
  expect(good(await store.list())).toHaveLength(version)
  if (version === 2) expect(good(await store.body('old'))).toEqual({ values: Float64Array.of(7.2) })
})
