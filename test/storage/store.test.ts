import { openDB } from 'idb'
import { beforeEach, describe, expect, test, vi } from 'vitest'
import type { Edit } from '../../src/notebook/edit'
import { toFile } from '../../src/notebook/toFile'
import { openStore } from '../../src/storage/store'
import { cell, EMPTY, edited, number, refusal } from '../notebook/samples'
import { freshBrowser, good, opened } from './setup'

const ph = (value: number): Edit => cell('first', 'ph', number(value))
const edits = (count: number): Edit[] => Array.from({ length: count }, (_, at) => ph(at / 100))

beforeEach(freshBrowser)

describe('a notebook in the browser', () => {
  test('is there again in another tab', async () => {
    const store = await opened(() => 5)
    expect(good(await store.list())).toEqual([])
    good(await store.create(EMPTY))
    good(await store.append('book', [ph(7.4), ph(7.6)]))
    const other = await opened()
    expect(good(await other.list())).toEqual([
      { id: 'book', name: 'Test pool', place: '', words: 'test pool', changed: 5, head: 2, snapshot: 0 },
    ])
    expect(good(await other.load('book'))).toEqual(edited(EMPTY, ph(7.6)))
  })

  test('is the same after more edits than a snapshot holds, one by one or all at once', async () => {
    const store = await opened()
    good(await store.create(EMPTY))
    for (const edit of edits(130)) good(await store.append('book', [edit]))
    good(await store.append('book', edits(250)))
    good(await store.append('book', [ph(7.7)]))
    expect(good(await (await opened()).load('book'))).toEqual(edited(EMPTY, ph(7.7)))
    const [entry] = good(await store.list())
    expect(entry).toMatchObject({ head: 381, snapshot: 380 })
    const kept = JSON.parse(good(await store.raw('book')))
    expect(kept.snapshots.map(({ seq }: { seq: number }) => seq)).toEqual([100, 380])
    expect(kept.log).toHaveLength(281)
  })

  test('the list has the last changed first, under its name of now', async () => {
    let time = 0
    const store = await opened(() => ++time)
    good(await store.create({ ...EMPTY, id: 'one', name: 'One' }))
    good(await store.create({ ...EMPTY, id: 'two', name: 'Two' }))
    good(await store.append('one', [{ type: 'change_notebook', set: { name: 'Uno' } }]))
    expect(good(await store.list()).map(({ name }) => name)).toEqual(['Uno', 'Two'])
    good(await store.rename('two', 'Due'))
    expect(good(await store.list()).map(({ name }) => name)).toEqual(['Due', 'Uno'])
    expect(good(await store.load('two')).name).toBe('Due')
  })

  test('a copy lives on its own', async () => {
    const store = await opened()
    good(await store.create(EMPTY))
    good(await store.append('book', [ph(7.4)]))
    const copy = good(await store.copy('book', 'Copy'))
    good(await store.append(copy.id, [ph(7.0)]))
    expect(good(await store.load('book'))).toEqual(edited(EMPTY, ph(7.4)))
    expect(good(await store.load(copy.id)).cells).toEqual({ 'first/ph': number(7.0) })
  })

  test('a removed one is gone with all its records', async () => {
    const store = await opened()
    good(await store.create(EMPTY))
    good(await store.create({ ...EMPTY, id: 'book2', name: 'Next' }))
    good(await store.append('book', edits(120)))
    good(await store.remove('book'))
    expect(refusal(await store.load('book'))).toMatchInlineSnapshot(
      `"The browser no longer keeps this notebook; save it to a file."`,
    )
    expect(JSON.parse(good(await store.raw('book')))).toEqual({ snapshots: [], log: [] })
    expect(good(await store.load('book2')).name).toBe('Next')
  })
})

describe('writing', () => {
  test('counts as done only after a strict transaction', async () => {
    const asked: (string | undefined)[] = []
    const transaction = IDBDatabase.prototype.transaction
    const spy = vi.spyOn(IDBDatabase.prototype, 'transaction').mockImplementation(function (
      this: IDBDatabase,
      stores,
      mode,
      options,
    ) {
      if (mode === 'readwrite') asked.push(options?.durability)
      return transaction.call(this, stores, mode, options)
    })
    const store = await opened()
    good(await store.create(EMPTY))
    good(await store.append('book', [ph(7)]))
    good(await store.remove('book'))
    expect(asked).toEqual(['strict', 'strict', 'strict'])
    spy.mockRestore()
  })

  test('appends that nobody waited for are kept in order', async () => {
    const store = await opened()
    good(await store.create(EMPTY))
    const all = await Promise.all(edits(40).map((edit) => store.append('book', [edit])))
    expect(all.every((answer) => answer === undefined)).toBe(true)
    expect(good(await (await opened()).load('book'))).toEqual(edited(EMPTY, ...edits(40)))
  })

  test('two tabs never interleave: the one that comes late is refused', async () => {
    const [one, two] = [await opened(), await opened()]
    good(await one.create(EMPTY))
    good(await two.load('book'))
    good(await one.append('book', [ph(7.1)]))
    expect(refusal(await two.append('book', [ph(7.2)]))).toMatchInlineSnapshot(
      `"Another tab has changed this notebook since it was opened here. Save this one to a file if you need it, then open it again."`,
    )
    expect(good(await one.load('book'))).toEqual(edited(EMPTY, ph(7.1)))
    good(await two.load('book'))
    good(await two.append('book', [ph(7.3)]))
    expect(refusal(await one.append('book', [ph(7.4)]))).toContain('Another tab')
  })

  test('what could not be read again is not written', async () => {
    const store = await opened()
    good(await store.create(EMPTY))
    const hostile = {
      type: 'set_cell',
      scenario: 'first',
      quantity: 'ph',
      cell: { kind: 'value', canonical: Number.NaN },
    }
    expect(refusal(await store.append('book', [ph(7), hostile as never]))).not.toBe('not refused')
    expect(refusal(await store.append('book', [ph(7), cell('gone', 'ph', null)]))).toContain('no longer')
    expect(good(await store.list())[0]?.head).toBe(0)
    expect(refusal(await store.create({ ...EMPTY, id: 'other', name: '' }))).toMatchInlineSnapshot(
      `"other, name: the name is empty."`,
    )
    good(await store.append('book', [ph(7)]))
  })

  test('to a notebook that is not open, or stored twice, is refused', async () => {
    const store = await opened()
    good(await store.create(EMPTY))
    expect(refusal(await store.create(EMPTY))).toMatchInlineSnapshot(`"The notebook “Test pool” is stored already."`)
    expect(refusal(await (await opened()).append('book', [ph(7)]))).toMatchInlineSnapshot(
      `"This notebook is not open in this tab, so nothing was written."`,
    )
    const other = await opened()
    good(await other.remove('book'))
    expect(refusal(await store.append('book', [ph(7)]))).toMatchInlineSnapshot(
      `"The browser no longer keeps this notebook; save it to a file."`,
    )
  })

  test('with no room left is refused, and works again when there is', async () => {
    const store = await opened()
    good(await store.create(EMPTY))
    const full = vi.spyOn(IDBObjectStore.prototype, 'add').mockImplementation(() => {
      throw new DOMException('', 'QuotaExceededError')
    })
    expect(refusal(await store.append('book', [ph(7)]))).toMatchInlineSnapshot(
      `"The browser has no room left, so the last changes are not saved. Delete notebooks that you no longer need, or save this one to a file."`,
    )
    full.mockRestore()
    good(await store.append('book', [ph(7.5)]))
    expect(good(await store.load('book'))).toEqual(edited(EMPTY, ph(7.5)))
  })

  test('after the connection was closed is refused', async () => {
    const store = await opened()
    good(await store.create(EMPTY))
    store.close()
    expect(refusal(await store.append('book', [ph(7)]))).toMatchInlineSnapshot(
      `"The connection to the browser’s store was closed. Save the notebook to a file, then load the page again."`,
    )
    expect(refusal(await store.list())).toContain('connection')
  })
})

describe('damage', () => {
  /** The browser with one record of the notebook changed by hand. */
  async function damaged(store: 'log' | 'snapshots', seq: number, record: object | null): Promise<void> {
    const tab = await opened()
    good(await tab.create(EMPTY))
    good(await tab.append('book', edits(110)))
    good(await tab.append('book', edits(5)))
    tab.close()
    const database = await openDB('basinbook')
    if (record === null) await database.delete(store, ['book', seq])
    else await database.put(store, { ...(await database.get(store, ['book', seq])), ...record })
    database.close()
  }

  test('of the latest snapshot costs nothing', async () => {
    await damaged('snapshots', 110, { text: '{"format":' })
    expect(good(await (await opened()).load('book'))).toEqual(edited(EMPTY, ...edits(5)))
  })

  test('of an edit is a problem, and the records can be exported', async () => {
    await damaged('log', 112, { edit: { type: 'set_cell', scenario: 'first' } })
    const store = await opened()
    expect(refusal(await store.load('book'))).toMatchInlineSnapshot(
      `"Test pool: of 115 stored changes, number 112 cannot be read. Save the stored records to a file and ask for help with it."`,
    )
    expect(JSON.parse(good(await store.raw('book'))).log).toHaveLength(115)
    expect(refusal(await store.copy('book', 'Copy'))).toContain('112')
    expect(good(await store.list())).toHaveLength(1)
  })

  test('by a missing edit, or one that does not apply', async () => {
    await damaged('log', 113, null)
    expect(refusal(await (await opened()).load('book'))).toMatchInlineSnapshot(
      `"Test pool: of 115 stored changes, number 113 is missing. Save the stored records to a file and ask for help with it."`,
    )
    freshBrowser()
    await damaged('log', 113, { edit: { type: 'remove_scenario', scenario: 'gone' } })
    expect(refusal(await (await opened()).load('book'))).toContain('113')
  })

  test('by an edit of a newer format says so', async () => {
    await damaged('log', 113, { format: 4 })
    expect(refusal(await (await opened()).load('book'))).toMatchInlineSnapshot(
      `"Test pool is written in version 4 of the notebook format, and this program reads up to version 3; open it with a newer Basinbook."`,
    )
  })

  test('of both snapshots', async () => {
    await damaged('snapshots', 110, { text: '' })
    const database = await openDB('basinbook')
    await database.put('snapshots', { notebook: 'book', seq: 0, text: toFile({ ...EMPTY, version: 4 as 3 }) })
    expect(refusal(await (await opened()).load('book'))).toMatchInlineSnapshot(
      `"Test pool is written in version 4 of the notebook format, and this program reads up to version 3; open it with a newer Basinbook."`,
    )
    await database.put('snapshots', { notebook: 'book', seq: 0, text: '' })
    expect(refusal(await (await opened()).load('book'))).toMatchInlineSnapshot(
      `"Test pool: what the browser keeps of this notebook is damaged. Save the stored records to a file and ask for help with it."`,
    )
  })
})

describe('a browser that keeps nothing', () => {
  test('has no store', async () => {
    vi.stubGlobal('indexedDB', undefined)
    expect(refusal(await openStore())).toMatchInlineSnapshot(
      `"This browser does not let the page keep anything, as in some private windows. What you enter is gone when the tab closes: save the notebook to a file."`,
    )
    vi.unstubAllGlobals()
    vi.spyOn(indexedDB, 'open').mockImplementation(() => {
      throw new DOMException('', 'SecurityError')
    })
    expect(refusal(await openStore())).toContain('private')
  })

  test('or one of a newer program', async () => {
    const newer = await openDB('basinbook', 7)
    newer.close()
    expect(refusal(await openStore())).toMatchInlineSnapshot(
      `"What the browser keeps was written by a newer Basinbook. Load the page again; if that does not help, clear the browser’s cache of it."`,
    )
  })

  test('an older tab that does not let go holds up a newer one, and ours lets go', async () => {
    const tab = await opened()
    const newer = await openDB('basinbook', 9)
    expect(newer.version).toBe(9)
    expect(refusal(await tab.list())).toContain('closed')
  })
})
