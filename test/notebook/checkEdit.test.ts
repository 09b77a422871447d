import { describe, expect, test } from 'vitest'
import { checkEdit } from '../../src/notebook/checkEdit'
import { checkFormula } from '../../src/notebook/checkFormula'
import { checkNotebook } from '../../src/notebook/checkNotebook'
import type { Edit } from '../../src/notebook/edit'
import type { Cell } from '../../src/notebook/notebook'
import { sentence } from '../../src/words/say'
import { cell, EMPTY, edited, number, refusal, sample, scenario } from './samples'
import { catalog } from './worksheets'

const book = edited(EMPTY, scenario('warm', 'a1', 'Warm'))
const check = (edit: Edit) => refusal(checkEdit(book, edit, catalog, checkFormula))
const set = (quantity: string, content: Cell | null) => check(cell('warm', quantity, content))
const faultOf = (text: string) =>
  checkEdit(book, cell('warm', 'ph', { kind: 'formula', text }), catalog, checkFormula)?.code
const formula = (text: string) => set('ph', { kind: 'formula', text })

describe('what a cell can hold', () => {
  test('a number in the accepted range, in any unit of its kind', () => {
    expect(set('ph', number(7.4))).toBe('not refused')
    expect(set('temperature', { kind: 'value', entered: '59', unit: '°F', canonical: 15 })).toBe('not refused')
    expect(set('ph', { kind: 'not_taken' })).toBe('not refused')
    expect(set('ph', null)).toBe('not refused')
    expect(set('gone', null)).toBe('not refused')
  })

  test('an impossible number is refused in the unit that it was entered in', () => {
    expect(set('ph', number(15))).toMatchInlineSnapshot(
      `"The ph: 15 cannot be; it lies from 0 to 14. Check the entry."`,
    )
    expect(set('salt', number(-1, 'mg/L as NaCl'))).toMatchInlineSnapshot(
      `"The salt: -1 mg/L NaCl cannot be; it lies from 0 to 360000 mg/L NaCl. Check the entry."`,
    )
    expect(set('temperature', { kind: 'value', entered: '300', unit: '°F', canonical: 148.9 })).toMatchInlineSnapshot(
      `"The temperature: 300 °F cannot be; it lies from 28.4 to 140 °F. Check the entry."`,
    )
    expect(set('ph', number(Number.NaN))).not.toBe('not refused')
  })

  test('another kind of thing is refused', () => {
    expect(set('turbidness', number(1))).toMatchInlineSnapshot(
      `"No worksheet of this notebook has a quantity “turbidness”."`,
    )
    expect(set('constructor', number(1))).toMatchInlineSnapshot(
      `"No worksheet of this notebook has a quantity “constructor”."`,
    )
    expect(set('temperature', number(20, 'm'))).toMatchInlineSnapshot(
      `"“m” is a unit of length; here a unit of temperature is wanted, such as °C."`,
    )
    expect(set('ph', { kind: 'choice', id: 'vinyl' })).toMatchInlineSnapshot(`"The ph takes a number, not a choice."`)
    expect(set('shell', number(1, 'choice'))).toMatchInlineSnapshot(
      `"The shell takes one of its choices: vinyl liner, plaster."`,
    )
    expect(set('shell', { kind: 'choice', id: 'wood' })).toMatchInlineSnapshot(
      `"The shell: “wood” is not one of its choices: vinyl liner, plaster."`,
    )
    expect(set('shell', { kind: 'choice', id: 'vinyl' })).toBe('not refused')
  })

  test('a worked-out row takes an assumption, but cannot be not taken', () => {
    expect(set('lsi', number(0.2, '1'))).toBe('not refused')
    expect(set('lsi', { kind: 'formula', text: 'ph - 7' })).toBe('not refused')
    expect(set('lsi', { kind: 'not_taken' })).toMatchInlineSnapshot(
      `"The lsi is worked out by the notebook; it cannot be marked as not taken."`,
    )
    expect(set('volume', number(20, 'mg/L'))).toMatchInlineSnapshot(
      `"“mg/L” is a unit of concentration; here a unit of volume is wanted, such as m³."`,
    )
    expect(set('volume', { kind: 'choice', id: 'vinyl' })).toMatchInlineSnapshot(
      `"The volume takes a number, not a choice."`,
    )
  })

  test('a formula that can be read and names what is there', () => {
    expect(formula("baseline.ph + 'warm'.ph - 7")).toBe('not refused')
    expect(formula("baseline.ph + 'warm'.salt_used")).toContain('At character 1 pH and mg/L as NaCl meet')
    expect(formula('ph +')).toMatchInlineSnapshot(
      `"The formula ends after “+”, where a number, a quantity or a function has to follow."`,
    )
    expect(formula("'gone'.ph")).toMatchInlineSnapshot(
      `"The formula names a scenario that is no longer in the notebook."`,
    )
    expect(faultOf('acidity')).toBe('formula_unknown_name')
    expect(faultOf("'warm'.acidity")).toBe('formula_unknown_name')
    expect(faultOf('water.lsi')).toBe('formula_unknown_name')
    expect(faultOf('RAND()')).toBe('formula_unknown_function')
    expect(faultOf('ROUND()')).toBe('formula_argument_count')
  })
})

describe('other edits', () => {
  test('a sample has readings of inputs only, each possible', () => {
    const put = (readings: Parameters<typeof sample>[1]) =>
      check({ type: 'put_sample', sample: sample('one', readings) })
    expect(put({ ph: number(7), shell: { kind: 'choice', id: 'vinyl' } })).toBe('not refused')
    expect(put({ ph: number(7), lsi: number(0, '1') })).toMatchInlineSnapshot(
      `"The lsi is worked out by the notebook, so a sample cannot have a reading of it."`,
    )
    expect(put({ ph: number(-1) })).toMatchInlineSnapshot(
      `"The ph: -1 cannot be; it lies from 0 to 14. Check the entry."`,
    )
    expect(put({ gone: number(1) })).toMatchInlineSnapshot(`"No worksheet of this notebook has a quantity “gone”."`)
  })

  test('a row is shown in a unit of its kind', () => {
    expect(check({ type: 'set_unit', quantity: 'temperature', unit: '°F' })).toBe('not refused')
    expect(check({ type: 'set_unit', quantity: 'temperature', unit: null })).toBe('not refused')
    expect(check({ type: 'set_unit', quantity: 'temperature', unit: 'kg' })).toMatchInlineSnapshot(
      `"“kg” is a unit of mass; here a unit of temperature is wanted, such as °C."`,
    )
  })

  test('the cells of a new scenario, and each edit of a step, are looked at too', () => {
    const add: Edit = {
      ...(scenario('cold', 'a2') as Extract<Edit, { type: 'add_scenario' }>),
      cells: { ph: number(15) },
    }
    expect(check(add)).toContain('15')
    const refers = cell('warm', 'ph', { kind: 'formula', text: "'cold'.ph" })
    expect(check(refers)).not.toBe('not refused')
    expect(check({ type: 'together', edits: [scenario('cold', 'a2'), refers] as never })).toBe('not refused')
    expect(check({ type: 'together', edits: [cell('warm', 'ph', number(15))] as never })).toContain('15')
  })

  test('the rest has nothing to do with the worksheets', () => {
    expect(check({ type: 'remove_scenario', scenario: 'warm' })).toBe('not refused')
  })
})

test('a whole notebook: each fault with its place', () => {
  const wrong = edited(
    book,
    cell('warm', 'ph', number(15)),
    cell('first', 'gone', number(1)),
    { type: 'put_sample', sample: sample('one', { salt: number(-5, 'mg/L as NaCl') }) },
    { type: 'set_unit', quantity: 'ph', unit: 'm' },
  )
  expect(checkNotebook(book, catalog, 'mine.json')).toEqual([])
  expect(checkNotebook(wrong, catalog, 'mine.json').map(sentence)).toMatchInlineSnapshot(`
    [
      "mine.json, cells.warm/ph: The ph: 15 cannot be; it lies from 0 to 14. Check the entry.",
      "mine.json, cells.first/gone: no worksheet of this notebook has a quantity “gone”.",
      "mine.json, samples.one.readings.salt: The salt: -5 mg/L NaCl cannot be; it lies from 0 to 360000 mg/L NaCl. Check the entry.",
      "mine.json, units.ph: “m” is a unit of length; here a unit of pH is wanted, such as pH.",
    ]
  `)
})
