import fc from 'fast-check'
import { openDB } from 'idb'
import { beforeEach, describe, expect, test } from 'vitest'
import { createFinder, oneOff } from '../../src/storage/finder'
import { folded } from '../../src/storage/folded'
import { EMPTY, sample } from '../notebook/samples'
import { freshBrowser, good, opened } from './setup'

const named = (...words: readonly string[]) => words.map((text) => ({ name: text, words: folded(text) }))
const found = (query: string, ...words: readonly string[]) =>
  [...createFinder(named(...words)).find(query)].map((at) => words[at])

describe('folding', () => {
  test.each([
    ['Peña  Ñandú', 'pena nandu'],
    ['STRASSE, Straße', 'strasse, strasse'],
    ['Søren Łódź Æble', 'soren lodz aeble'],
    ['ｆｕｌｌ', 'full'],
    ['İstanbul ILIK', 'istanbul ilik'],
    ['a\tb\nc', 'a b c'],
  ])('%s is searched as %s', (text, small) => expect(folded(text)).toBe(small))
})

describe('finding', () => {
  test('every word counts, anywhere; what begins with it comes first', () => {
    const pools = ['Old Mill Road', 'Millpond House', 'Windmill', 'Mill', 'Quarry']
    expect(found('mill', ...pools)).toEqual(['Millpond House', 'Mill', 'Old Mill Road', 'Windmill'])
    expect(found('road mil', ...pools)).toEqual(['Old Mill Road'])
    expect(found('', ...pools)).toEqual(pools)
    expect(found('nothing', ...pools)).toEqual([])
  })

  test('accents and case make no difference, in what is typed or in what is there', () => {
    expect(found('PENA', 'Casa Peña', 'Pe')).toEqual(['Casa Peña'])
    expect(found('peña', 'Casa Pena')).toEqual(['Casa Pena'])
  })

  test('one wrong letter is found behind the exact ones, two are not', () => {
    const pools = ['Herron bay', 'Heron house', 'Heorn lane', 'Huron']
    expect(found('heron', ...pools)).toEqual(['Heron house', 'Herron bay', 'Heorn lane', 'Huron'])
    expect(found('hxrxn', ...pools)).toEqual([])
    // a short word has too many neighbours
    expect(found('ray', ...pools)).toEqual([])
  })

  test('exact finds are those of a plain search of every text for every word', () => {
    const word = fc.string({ minLength: 1, maxLength: 5, unit: fc.constantFrom('a', 'b', 'é', 'E', ' ') })
    fc.assert(
      fc.property(fc.array(word, { maxLength: 30 }), word, (texts, query) => {
        const rows = named(...texts)
        const asked = folded(query).split(' ').filter(Boolean)
        const plain = rows.flatMap(({ words }, at) => (asked.every((one) => words.includes(one)) ? [at] : []))
        const given = [...createFinder(rows).find(query)]
        expect(given.slice(0, plain.length).sort((a, b) => a - b)).toEqual(plain)
        expect(new Set(given).size).toBe(given.length)
      }),
      { seed: 20260512, numRuns: 500 },
    )
  })

  test('one letter off is what a full edit distance says, the other word’s ending aside', () => {
    const word = fc.string({ minLength: 4, maxLength: 7, unit: fc.constantFrom('a', 'b', 'c') })
    fc.assert(
      fc.property(word, word, (typed, known) => {
        const least = Math.min(
          ...Array.from({ length: known.length + 1 }, (_, end) => distance(typed, known.slice(0, end))),
        )
        expect(oneOff(typed, known)).toBe(least <= 1)
      }),
      { seed: 20260513, numRuns: 2000 },
    )
  })
})

/** Optimal string alignment distance: Damerau (1964) as tabulated by Wagner and Fischer (1974), with neighbours changed over. */
function distance(a: string, b: string): number {
  const d = Array.from({ length: a.length + 1 }, (_, i) => [i, ...new Array<number>(b.length).fill(0)])
  const at = (i: number, j: number) => d[i]?.[j] ?? Number.POSITIVE_INFINITY
  for (let j = 0; j <= b.length; j++) (d[0] as number[])[j] = j
  for (let i = 1; i <= a.length; i++) {
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1
      let best = Math.min(at(i - 1, j) + 1, at(i, j - 1) + 1, at(i - 1, j - 1) + same)
      if (a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) best = Math.min(best, at(i - 2, j - 2) + 1)
      ;(d[i] as number[])[j] = best
    }
  }
  return at(a.length, b.length)
}

describe('what the store searches', () => {
  beforeEach(freshBrowser)

  test('follows name, place, note, samples and remarks', async () => {
    const store = await opened()
    good(await store.create({ ...EMPTY, place: 'Élan Lane 4' }))
    good(await store.append('book', [{ type: 'put_sample', sample: { ...sample('one', {}), name: 'Bottle 17' } }]))
    good(await store.append('book', [{ type: 'put_remark', remark: { id: 'r', date: '', text: 'Gate code at desk' } }]))
    good(await store.append('book', [{ type: 'change_notebook', set: { note: 'Mrs Ōta' } }]))
    const [entry] = good(await store.list())
    expect(entry).toMatchObject({ name: 'Test pool', place: 'Élan Lane 4' })
    expect(entry?.words).toBe('test pool elan lane 4 mrs ota bottle 17 gate code at desk')
    store.close()
  })

  test('a store of version 2 is given its words when it is first opened, edits since the snapshot included', async () => {
    const { place: _, plans, additions, remarks, lessons, charts, precisions, ...rest } = EMPTY
    const old = { ...rest, version: 1, name: 'Älter Hof' }
    const before = await openDB('basinbook', 2, {
      upgrade(database) {
        database.createObjectStore('notebooks', { keyPath: 'id' })
        database.createObjectStore('log', { keyPath: ['notebook', 'seq'] })
        database.createObjectStore('snapshots', { keyPath: ['notebook', 'seq'] })
        database.createObjectStore('imports', { keyPath: 'id' })
        database.createObjectStore('import_columns', { keyPath: 'id' })
        database.createObjectStore('mappings', { keyPath: 'name' })
      },
    })
    await before.put('notebooks', { id: 'book', name: 'Älter Hof', changed: 5, head: 1, snapshot: 0 })
    await before.put('snapshots', { notebook: 'book', seq: 0, text: JSON.stringify(old) })
    await before.put('log', {
      notebook: 'book',
      seq: 1,
      format: 1,
      edit: { type: 'change_notebook', set: { note: 'Öl' } },
    })
    await before.put('notebooks', { id: 'torn', name: 'Torn Café', changed: 4, head: 0, snapshot: 0 })
    before.close()
    const store = await opened()
    const listed = good(await store.list())
    expect(listed.map(({ id, place, words, changed }) => ({ id, place, words, changed }))).toEqual([
      { id: 'book', place: '', words: 'alter hof ol', changed: 5 },
      { id: 'torn', place: '', words: 'torn cafe', changed: 4 },
    ])
    store.close()
  })

  test('a list longer than one piece comes whole and in order', async () => {
    const store = await opened()
    for (let i = 0; i < 3; i++) good(await store.create({ ...EMPTY, id: `book${i}`, name: `Pool ${i}` }))
    store.close()
    const database = await openDB('basinbook')
    const writing = database.transaction('notebooks', 'readwrite')
    for (let i = 0; i < 1200; i++)
      await writing.store.put({
        id: `many${i}`,
        name: `Pool ${i}`,
        place: '',
        words: `pool ${i}`,
        changed: i,
        head: 0,
        snapshot: 0,
      })
    await writing.done
    database.close()
    const again = await opened()
    const listed = good(await again.list())
    expect(listed).toHaveLength(1203)
    expect(listed.every((entry, at) => at === 0 || entry.changed <= (listed[at - 1]?.changed ?? 0))).toBe(true)
    again.close()
  })
})
