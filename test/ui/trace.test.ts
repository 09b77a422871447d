import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { assumptionsOf } from '../../src/notebook/assumptions'
import { fromFile } from '../../src/notebook/file'
import type { Notebook } from '../../src/notebook/notebook'
import { inOrder } from '../../src/notebook/order'
import { columnOf } from '../../src/ui/plan/columnOf'
import type { Book } from '../../src/ui/shell/book'
import { formulaWithNumbers } from '../../src/ui/trace/formulaWithNumbers'
import { stepOf } from '../../src/ui/trace/stepOf'
import { shippedOutline } from '../../src/worksheet/shippedOutline'
import { applied, cell, edited, number, sample, scenario } from '../notebook/samples'
import { viewOf } from './viewOf'

const EXAMPLE = fromFile(readFileSync('examples/little-heron.json', 'utf8'), 'little-heron.json') as Notebook
const BASE = inOrder(EXAMPLE)[0]?.id ?? ''

/** As much of a book as a step reads. */
function bookOf(notebook: Notebook): Book {
  const view = viewOf(notebook)
  return {
    ...view,
    scenario: (id: string) => notebook.scenarios[id],
    sample: (id: string) => notebook.samples[id],
  } as unknown as Book
}

describe('a formula with its numbers put in', () => {
  const outcome =
    (values: Readonly<Record<string, number | string | boolean>>) => (of: string | null, name: string) => {
      const value = values[of === null ? name : `${of}.${name}`]
      return value === undefined ? undefined : { value, notices: [] }
    }
  test('has each value with its unit, in the notebook’s own, and keeps the rest as it is written', () => {
    const catalog = shippedOutline()
    const shown = formulaWithNumbers(
      'MAX(0; target_salt - salt) * volume / 1000',
      catalog,
      outcome({ target_salt: 3200, salt: 2_500.123456789, volume: 20 }),
    )
    expect(shown).toBe('MAX(0; 3200 mg/L NaCl - 2500.12 mg/L NaCl) * 20 m³ / 1000')
  })

  test('keeps the name of what has no value, and the outputs of solves', () => {
    const shown = formulaWithNumbers(
      "DEFAULT(salt; baseline.salt) + 'x'.lsi + water.lsi",
      shippedOutline(),
      outcome({ 'x.lsi': -0.25 }),
    )
    expect(shown).toBe('DEFAULT(salt; baseline.salt) + −0.25 + water.lsi')
    expect(formulaWithNumbers('water.lsi', shippedOutline(), outcome({}))).toBeNull()
    expect(formulaWithNumbers('(', shippedOutline(), outcome({}))).toBeNull()
  })
})

describe('a step of the trace', () => {
  test('of a worked-out value: its formula, its functions with version and source, the readings that it rests on', () => {
    const step = stepOf(bookOf(EXAMPLE), { scenario: BASE, quantity: 'lsi' })
    expect(step.formula).toBe('water.lsi')
    expect(step.functions).toEqual([
      { name: 'WATER', version: expect.any(Number), source: expect.stringMatching(/\d{4}/) },
    ])
    expect(step.reads.map(({ quantity }) => quantity)).toEqual(
      expect.arrayContaining(['ph', 'temperature', 'total_alkalinity', 'calcium_hardness']),
    )
    expect(step.reads.every((read) => read.scenario === BASE)).toBe(true)
  })

  test('of a reading of a lab file: sample, date, test, file and row', () => {
    const bottle = {
      ...sample('bottle', { ph: { kind: 'value', entered: '7.6', unit: 'pH', canonical: 7.6, method: 'electrode' } }),
      name: 'Deep end',
      date: '2026-05-01',
      origin: { file: 'may.csv', row: 12 },
    }
    const notebook = edited(EXAMPLE, { type: 'put_sample', sample: bottle }, scenario('tied', 'a9', 'Tied', 'bottle'))
    const step = stepOf(bookOf(notebook), { scenario: 'tied', quantity: 'ph' })
    const said = step.notes.join(' ')
    for (const part of ['Deep end', '2026-05-01', 'Written as 7.6', 'electrode', 'may.csv', 'row 12'])
      expect(said).toContain(part)
    expect(step.reads).toEqual([])
  })

  test('of what follows the baseline leads to the baseline; of a link to the scenario that it names', () => {
    const notebook = edited(
      EXAMPLE,
      scenario('one', 'a9', 'One'),
      cell('one', 'ph', { kind: 'formula', text: `'${BASE}'.ph_after_dilution` }),
    )
    const book = bookOf(notebook)
    expect(stepOf(book, { scenario: 'one', quantity: 'temperature' }).reads).toEqual([
      { scenario: BASE, quantity: 'temperature' },
    ])
    const link = stepOf(book, { scenario: 'one', quantity: 'ph' })
    expect(link.reads).toEqual([{ scenario: BASE, quantity: 'ph_after_dilution' }])
    expect(link.formula).toBe("'As tested'.ph_after_dilution")
    expect(link.numbers).toMatch(/^\d\.\d+$/)
  })

  test('says when something was assumed, and when a worksheet’s own value stood in', () => {
    const notebook = edited(
      EXAMPLE,
      cell(BASE, 'volume', { kind: 'value', entered: '6000', unit: 'US gal', canonical: 22.7 }),
    )
    expect(stepOf(bookOf(notebook), { scenario: BASE, quantity: 'volume' }).notes.join(' ')).toMatch(
      /^Assumed: .*Written as 6000/,
    )
    expect(stepOf(bookOf(EXAMPLE), { scenario: BASE, quantity: 'borate_used' }).notes.join(' ')).toContain('taken as 0')
    expect(stepOf(bookOf(EXAMPLE), { scenario: BASE, quantity: 'hocl_model' }).notes.join(' ')).toMatch(/own value/)
  })
})

describe('the list of assumptions', () => {
  test('has every value typed over a formula, and no entry, from left to right and from top to bottom', () => {
    const notebook = edited(
      EXAMPLE,
      scenario('one', 'a9', 'One'),
      cell('one', 'volume', number(40, 'm³')),
      cell(BASE, 'lsi', number(0.1, '1')),
      cell(BASE, 'volume', number(42, 'm³')),
      cell(BASE, 'ph', number(7.5)),
    )
    expect(assumptionsOf(notebook, shippedOutline()).map((one) => `${one.scenario}/${one.quantity}`)).toEqual([
      `${BASE}/volume`,
      `${BASE}/lsi`,
      'one/volume',
    ])
    const gone = applied(notebook, cell('one', 'volume', null)).notebook
    expect(assumptionsOf(gone, shippedOutline())).toHaveLength(2)
  })

  test('one of the baseline stands in the scenarios that follow it, and one of a scenario only there', () => {
    const book = bookOf(edited(EXAMPLE, cell(BASE, 'volume', number(42, 'm³'))))
    const values = book.scenarios().map((id) => book.outcome(id, 'volume'))
    expect(values).toEqual(values.map(() => expect.objectContaining({ value: 42 })))
    const own = bookOf(edited(EXAMPLE, scenario('one', 'a9', 'One'), cell('one', 'volume', number(42, 'm³'))))
    expect(own.outcome('one', 'volume')).toMatchObject({ value: 42 })
    expect(own.outcome(BASE, 'volume')).not.toMatchObject({ value: 42 })
  })

  test('one is what the step plan is made with, in its scenario and in those that follow it', () => {
    const book = bookOf(edited(EXAMPLE, cell(BASE, 'volume', number(42, 'm³'))))
    for (const id of book.scenarios()) {
      const column = columnOf(book, id)
      expect(['volume', 'volume_low', 'volume_high'].map((name) => column?.get(name))).toEqual([42, 42, 42])
    }
    expect(columnOf(bookOf(EXAMPLE), BASE)?.has('volume_low')).toBe(false)
  })
})
