import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { apply } from '../../src/notebook/apply'
import type { Edit } from '../../src/notebook/edit'
import { fromFile } from '../../src/notebook/file'
import { MIGRATIONS, migrate } from '../../src/notebook/migrations/migrate'
import type { Notebook } from '../../src/notebook/notebook'
import { toFile } from '../../src/notebook/toFile'
import { isProblem } from '../../src/words/problem'
import { sentence } from '../../src/words/say'
import { randomWishes } from './randomEdits'
import { cell, EMPTY, edited, number, refusal, sample, scenario } from './samples'

const book = edited(
  EMPTY,
  {
    type: 'put_sample',
    sample: { ...sample('one', { ph: number(7.2) }), date: '2026-05-01T09:30', origin: { file: 'a.csv', row: 2 } },
  },
  scenario('warm', 'a1', 'Warm', 'one'),
  cell('warm', 'temperature', { kind: 'value', entered: '86', unit: '°F', canonical: 30, method: 'strip' }),
  cell('first', 'salt', { kind: 'not_taken' }),
  cell('first', 'calcium_hardness', { kind: 'formula', text: "'warm'.ph" }),
  { type: 'set_unit', quantity: 'temperature', unit: '°F' },
  { type: 'put_worksheet', id: 'mine', definition: { id: 'mine', groups: [{ rows: [] }] } },
  { type: 'computed_with', versions: { LANGELIER_INDEX: 1 } },
)

/** The sentences with which a text is refused. */
function refused(text: string): string[] {
  const result = fromFile(text, 'mine.json')
  return Array.isArray(result) ? result.map(sentence) : ['not refused']
}

type Json = Record<string, unknown> & Record<'samples' | 'cells' | 'scenarios', object>

/** The book as a file, with something in it changed. */
function changed(change: (json: Json) => void): string[] {
  const json = JSON.parse(toFile(book))
  change(json)
  return refused(JSON.stringify(json))
}

describe('a notebook file', () => {
  test('gives back what was saved', () => {
    expect(fromFile(toFile(book), 'mine.json')).toEqual(book)
    expect(fromFile(`\ufeff${toFile(book)}`, 'mine.json')).toEqual(book)
  })

  test('gives back any notebook that edits can make, as the same text', () => {
    fc.assert(
      fc.property(randomWishes(), (wishes) => {
        let notebook: Notebook = EMPTY
        for (const wish of wishes) {
          const edit = wish(notebook)
          const result = edit === null ? null : apply(notebook, edit)
          if (result !== null && !isProblem(result)) notebook = result.notebook
        }
        const text = toFile(notebook)
        const again = fromFile(text, 'mine.json')
        expect(again).toEqual(notebook)
        expect(Array.isArray(again) ? '' : toFile(again)).toBe(text)
      }),
      { seed: 20260501, numRuns: 200 },
    )
  })

  test('is the same text whichever way the notebook came about', () => {
    const edits: Edit[] = [
      cell('first', 'ph', number(7)),
      cell('first', 'salt', number(3000)),
      { type: 'set_unit', quantity: 'temperature', unit: '°F' },
      { type: 'set_unit', quantity: 'length', unit: 'ft' },
      { type: 'put_sample', sample: sample('one', {}) },
      { type: 'put_sample', sample: sample('another', {}) },
    ]
    expect(toFile(edited(EMPTY, ...edits))).toBe(toFile(edited(EMPTY, ...edits.toReversed())))
  })
})

describe('refusals', () => {
  test('of what is no notebook', () => {
    expect(refused('')).toMatchInlineSnapshot(`
      [
        "mine.json is not JSON text, or it is cut off; nothing was read.",
      ]
    `)
    expect(refused(toFile(book).slice(0, -20))).toMatchInlineSnapshot(`
      [
        "mine.json is not JSON text, or it is cut off; nothing was read.",
      ]
    `)
    expect(refused('[]')).toMatchInlineSnapshot(`
      [
        "mine.json is not a notebook file: its “format” does not say “basinbook-notebook”.",
      ]
    `)
    expect(refused('{"format":"basinbook-worksheet","version":1}')).toMatchInlineSnapshot(`
      [
        "mine.json is not a notebook file: its “format” does not say “basinbook-notebook”.",
      ]
    `)
  })

  test('of a newer version, or none', () => {
    expect(changed((json) => Object.assign(json, { version: 4, more: true }))).toMatchInlineSnapshot(`
      [
        "mine.json is written in version 4 of the notebook format, and this program reads up to version 3; open it with a newer Basinbook.",
      ]
    `)
    expect(changed((json) => Object.assign(json, { version: '1' }))).toMatchInlineSnapshot(`
      [
        "mine.json: its “version” is not a whole number from 1; this program reads up to 3.",
      ]
    `)
    expect(changed((json) => Object.assign(json, { version: 0 }))).toMatchInlineSnapshot(`
      [
        "mine.json: its “version” is not a whole number from 1; this program reads up to 3.",
      ]
    `)
  })

  test('of hostile text, at once', () => {
    const deep = `{"format":"basinbook-notebook","version":1,"worksheets":${'['.repeat(200_000)}${']'.repeat(200_000)}}`
    expect(refused(deep)).toMatchInlineSnapshot(`
      [
        "mine.json: more than 32 brackets stand inside one another; such a file is not read.",
      ]
    `)
    expect(refused(toFile(book).replace('"note"', '"__proto__"'))).toMatchInlineSnapshot(`
      [
        "mine.json, __proto__: this key is not accepted in any file.",
      ]
    `)
    expect(refused(toFile(book).replace('"groups"', '"constructor"'))).toMatchInlineSnapshot(`
      [
        "mine.json, worksheets.mine.constructor: this key is not accepted in any file.",
      ]
    `)
    expect(refused(' '.repeat(128_000_001))).toMatchInlineSnapshot(`
      [
        "mine.json has more than 128 million characters; so large a file is not read.",
      ]
    `)
    expect(({} as Record<string, unknown>).note).toBeUndefined()
  })

  test('of what does not belong, is missing or of another kind', () => {
    expect(changed((json) => Object.assign(json, { colour: 'blue' }))).toMatchInlineSnapshot(`
      [
        "mine.json, colour: a notebook has nothing of this name.",
      ]
    `)
    expect(changed((json) => delete json.note)).toMatchInlineSnapshot(`
      [
        "mine.json, note is missing.",
      ]
    `)
    expect(changed((json) => Object.assign(json, { name: 7 }))).toMatchInlineSnapshot(`
      [
        "mine.json, name: text in quotation marks is expected here, not 7.",
      ]
    `)
    expect(changed((json) => Object.assign(json, { name: 'x'.repeat(201) }))).toMatchInlineSnapshot(`
      [
        "mine.json, name: the text is longer than 200 characters.",
      ]
    `)
    expect(changed((json) => Object.assign(json, { profile: 'imperial' }))).toMatchInlineSnapshot(`
      [
        "mine.json, profile: one of metric, us is expected here, not imperial.",
      ]
    `)
    expect(changed((json) => Object.assign(json, { cells: [] }))).toMatchInlineSnapshot(`
      [
        "mine.json, cells: names with values in curly brackets are expected here, not [].",
      ]
    `)
    expect(changed((json) => Object.assign(json, { computedWith: { X: 1.5 } }))).toMatchInlineSnapshot(`
      [
        "mine.json, computedWith.X: a whole number is expected here, not 1.5.",
      ]
    `)
    expect(changed((json) => Object.assign(json, { computedWith: { X: -1 } }))).toMatchInlineSnapshot(`
      [
        "mine.json, computedWith.X: -1 is less than 0.",
      ]
    `)
    expect(changed((json) => Object.assign(json, { units: { 'pH?': 'pH' } }))).toMatchInlineSnapshot(`
      [
        "mine.json, units.pH?: this cannot be a name here.",
      ]
    `)
    expect(
      changed((json) => Object.assign(json.samples, { one: { ...sample('one', {}), elsewhere: 'no' } })),
    ).toMatchInlineSnapshot(`
      [
        "mine.json, samples.one.elsewhere: true or false is expected here, not no.",
      ]
    `)
    expect(
      changed((json) => Object.assign(json.samples, { one: { ...sample('one', {}), date: '1/2/26' } })),
    ).toMatchInlineSnapshot(`
      [
        "mine.json, samples.one.date: “1/2/26” cannot stand here.",
      ]
    `)
  })

  test('of cells that are none', () => {
    const put = (content: unknown) => changed((json) => Object.assign(json.cells, { 'first/ph': content }))
    expect(put({ kind: 'blank' })).toMatchInlineSnapshot(`
      [
        "mine.json, cells.first/ph.kind: nothing of this kind is known: blank.",
      ]
    `)
    expect(put({ kind: 'value', entered: '7', unit: 'pH', canonical: null })).toMatchInlineSnapshot(`
      [
        "mine.json, cells.first/ph.canonical: a number is expected here, not null.",
      ]
    `)
    expect(put({ kind: 'value', entered: '7', unit: 'pH' })).toMatchInlineSnapshot(`
      [
        "mine.json, cells.first/ph.canonical is missing.",
      ]
    `)
    expect(put(7.4)).toMatchInlineSnapshot(`
      [
        "mine.json, cells.first/ph: names with values in curly brackets are expected here, not 7.4.",
      ]
    `)
    expect(changed((json) => Object.assign(json.cells, { 'first/pH': { kind: 'not_taken' } }))).toMatchInlineSnapshot(`
      [
        "mine.json, cells.first/pH: this cannot be a name here.",
      ]
    `)
  })

  test('a number too large for a number is none', () => {
    expect(refused(toFile(book).replace('"canonical": 30', '"canonical": 1e999'))).toMatchInlineSnapshot(`
      [
        "mine.json, cells.warm/temperature.canonical: what stands there cannot be written as JSON.",
      ]
    `)
  })

  test('of parts that do not fit together', () => {
    const one = { id: 'cold', name: 'Cold', note: '', order: 'a2', sample: null }
    const put = (rest: object, id = 'cold') =>
      changed((json) => Object.assign(json.scenarios, { [id]: { ...one, ...rest } }))
    expect(put({}, 'other')).toMatchInlineSnapshot(`
      [
        "mine.json, scenarios.other.id: it has to be the same as the name it stands under, “other”.",
      ]
    `)
    expect(put({ order: 'a1' })).toMatchInlineSnapshot(`
      [
        "mine.json, scenarios.warm.order: another scenario has the same place.",
      ]
    `)
    expect(put({ order: '!' })).toMatchInlineSnapshot(`
      [
        "mine.json, scenarios.cold.order: “!” cannot stand here.",
      ]
    `)
    expect(put({ name: 'warm' })).toMatchInlineSnapshot(`
      [
        "mine.json, scenarios.cold.name: “warm” is taken by another scenario, or means the baseline.",
      ]
    `)
    expect(put({ name: 'Baseline' })).toMatchInlineSnapshot(`
      [
        "mine.json, scenarios.cold.name: “Baseline” is taken by another scenario, or means the baseline.",
      ]
    `)
    expect(put({ name: '' })).toMatchInlineSnapshot(`
      [
        "mine.json, scenarios.cold.name: the name is empty.",
      ]
    `)
    expect(put({ sample: 'gone' })).toMatchInlineSnapshot(`
      [
        "mine.json, scenarios.cold.sample: the notebook has no sample with this id.",
      ]
    `)
    expect(changed((json) => Object.assign(json, { scenarios: {} }))).toMatchInlineSnapshot(`
      [
        "mine.json, scenarios: a notebook has at least one scenario.",
        "mine.json, cells.first/calcium_hardness: the notebook has no scenario with this id.",
        "mine.json, cells.first/salt: the notebook has no scenario with this id.",
        "mine.json, cells.warm/temperature: the notebook has no scenario with this id.",
      ]
    `)
    expect(changed((json) => Object.assign(json, { name: 'a\tb' }))).toMatchInlineSnapshot(`
      [
        "mine.json, name: a name is one line, without tabs, line breaks and other control characters.",
      ]
    `)
  })

  test('of more than there can be', () => {
    const many = Object.fromEntries(Array.from({ length: 101 }, (_, at) => [`w${at}`, { id: `w${at}` }]))
    expect(changed((json) => Object.assign(json, { worksheets: many }))).toMatchInlineSnapshot(`
      [
        "mine.json, worksheets: there are more than 100 entries.",
      ]
    `)
  })

  test('are at most twenty at once', () => {
    const many = Object.fromEntries(Array.from({ length: 50 }, (_, at) => [`key${at}`, 1]))
    expect(changed((json) => Object.assign(json, many))).toHaveLength(20)
  })

  test('of any text: never an exception', () => {
    const texts = fc.oneof(
      fc.string(),
      fc.json(),
      fc.tuple(fc.nat(), fc.string({ maxLength: 3 })).map(([at, put]) => {
        const text = toFile(book)
        const place = at % text.length
        return text.slice(0, place) + put + text.slice(place + put.length)
      }),
    )
    fc.assert(
      fc.property(texts, (text) => {
        const result = fromFile(text, 'mine.json')
        if (Array.isArray(result))
          expect(result.map(sentence).every((words) => words.startsWith('mine.json'))).toBe(true)
        else expect(fromFile(toFile(result), 'mine.json')).toEqual(result)
      }),
      { seed: 20260501, numRuns: process.env.LONG ? 20_000 : 1_000 },
    )
  })
})

describe('migrations', () => {
  const renamed = { notebook: (old: unknown) => ({ ...(old as object), version: 2 }), edit: (old: unknown) => [old] }
  const doubled = {
    notebook: (old: unknown) => ({ ...(old as object), version: 3 }),
    edit: (old: unknown) => [old, old],
  }

  test('run from the version that was written, one after another', () => {
    expect(migrate('notebook', { version: 1 }, 1, [], [renamed, doubled])).toEqual({ today: { version: 3 } })
    expect(migrate('edit', 'a', 1, [], [renamed, doubled])).toEqual({ today: [['a'], ['a']] })
    expect(migrate('edit', 'a', 2, [], [renamed, doubled])).toEqual({ today: ['a', 'a'] })
    expect(migrate('edit', 'a', 3, [], [renamed, doubled])).toEqual({ today: 'a' })
  })

  test.each([1, 2])('open a notebook of version %i as one of today', (version) => {
    const text = readFileSync(new URL(`versions/${version}.json`, import.meta.url), 'utf8')
    const opened = fromFile(text, 'old.json')
    expect(opened).toMatchObject({ version: MIGRATIONS.length + 1, id: 'little-heron', place: '' })
    const { version: _, ...before } = JSON.parse(text)
    expect(opened).toMatchObject(before)
  })

  test('do not go back', () => {
    expect(refusal(migrate('edit', 'a', 4, ['Pool'], [renamed, doubled]))).toMatchInlineSnapshot(
      `"Pool is written in version 4 of the notebook format, and this program reads up to version 3; open it with a newer Basinbook."`,
    )
  })
})
