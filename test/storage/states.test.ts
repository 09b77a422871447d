import { openDB } from 'idb'
import { beforeEach, describe, expect, test } from 'vitest'
import type { Edit } from '../../src/notebook/edit'
import { cell, EMPTY, edited, number, refusal } from '../notebook/samples'
import { freshBrowser, good, opened } from './setup'

const MINUTE = 60_000
const ph = (value: number): Edit => cell('first', 'ph', number(value))

beforeEach(freshBrowser)

describe('earlier states', () => {
  test('are kept at the start of each stretch of work, not at each edit', async () => {
    let time = 0
    const store = await opened(() => time)
    good(await store.create(EMPTY))
    for (const value of [7.1, 7.2, 7.3]) good(await store.append('book', [ph(value)]))
    expect(good(await store.states('book'))).toEqual([{ seq: 0, at: 0 }])
    time = 6 * MINUTE
    good(await store.append('book', [ph(7.4)]))
    expect(good(await store.states('book'))).toEqual([
      { seq: 3, at: 0 },
      { seq: 0, at: 0 },
    ])
    expect(good(await store.state('book', 3))).toEqual(edited(EMPTY, ph(7.3)))
    expect(good(await store.state('book', 0))).toEqual(EMPTY)
  })

  test('are kept within long work too, and by another tab', async () => {
    let time = 0
    const store = await opened(() => time)
    good(await store.create(EMPTY))
    for (let at = 0; at < 40; at++) {
      time = at * MINUTE
      good(await store.append('book', [ph(at / 10)]))
    }
    expect(good(await store.states('book')).map(({ seq }) => seq)).toEqual([30, 0])
    const other = await opened(() => time)
    good(await other.load('book'))
    good(await other.append('book', [ph(7)]))
    expect(good(await store.states('book')).map(({ seq }) => seq)).toEqual([40, 30, 0])
  })

  test('are gone back to by an edit, and what was there before it is kept', async () => {
    const store = await opened(() => 0)
    good(await store.create(EMPTY))
    good(await store.append('book', [ph(7.1)]))
    good(await store.append('book', [ph(7.2)]))
    const first = good(await store.state('book', 0))
    good(await store.append('book', [{ type: 'go_back', to: first }]))
    const other = await opened()
    expect(good(await other.load('book'))).toEqual(EMPTY)
    const [latest] = good(await other.states('book'))
    expect(good(await other.state('book', latest?.seq ?? -1))).toEqual(edited(EMPTY, ph(7.2)))
  })

  test('stay few, however long the work', async () => {
    let time = 0
    const store = await opened(() => time)
    good(await store.create(EMPTY))
    for (let at = 0; at < 400; at++) {
      time += 2 * 60 * MINUTE
      good(await store.append('book', [ph(at / 100)]))
    }
    const kept = good(await store.states('book'))
    expect(kept.length).toBeGreaterThan(20)
    expect(kept.length).toBeLessThan(60)
  })

  test('go with their notebook', async () => {
    const store = await opened()
    good(await store.create(EMPTY))
    good(await store.append('book', [ph(7.1)]))
    good(await store.remove('book'))
    expect(good(await store.states('book'))).toEqual([])
    expect(refusal(await store.state('book', 0))).toMatchInlineSnapshot(`"This earlier state is no longer kept."`)
  })

  test('that are damaged are refused, and harm nothing', async () => {
    const store = await opened()
    good(await store.create(EMPTY))
    good(await store.append('book', [ph(7.1)]))
    const database = await openDB('basinbook')
    await database.put('states', { notebook: 'book', seq: 0, at: 0, text: '{"format":' })
    expect(refusal(await store.state('book', 0))).toContain('not JSON')
    good(await store.append('book', [ph(7.2)]))
  })
})

describe('a notebook that cannot be read to its end', () => {
  test('can be read up to there', async () => {
    const store = await opened()
    good(await store.create(EMPTY))
    good(await store.append('book', [ph(7.1), ph(7.2), ph(7.3)]))
    const database = await openDB('basinbook')
    await database.put('log', { notebook: 'book', seq: 3, format: 2, edit: { type: 'set_cell' } })
    expect(refusal(await store.load('book'))).toContain('number 3')
    expect(good(await store.readable('book'))).toEqual({ notebook: edited(EMPTY, ph(7.2)), seq: 2, head: 3 })
    await database.put('snapshots', { notebook: 'book', seq: 0, text: '' })
    expect(refusal(await store.readable('book'))).toContain('damaged')
  })
})
