import { describe, expect, test } from 'vitest'
import type { Edit } from '../../src/notebook/edit'
import { resolve } from '../../src/notebook/resolve'
import { cell, EMPTY, edited, number, sample, scenario } from './samples'
import { catalog } from './worksheets'

/** What stands in a cell, as `from value`. */
function stands(notebook: Parameters<typeof resolve>[0], scenarioId: string, quantity: string): string {
  const { from, cell: content } = resolve(notebook, catalog, scenarioId, quantity)
  if (content === null) return from
  if (content.kind === 'value') return `${from} ${content.canonical}`
  return `${from} ${content.kind === 'choice' ? content.id : content.kind}`
}

const put = (id: string, readings: Parameters<typeof sample>[1], elsewhere = false): Edit => ({
  type: 'put_sample',
  sample: sample(id, readings, elsewhere),
})

/** The baseline has a sample with pH and salt and a diameter typed in; "warm" follows it, "own" and "far" have samples. */
const book = edited(
  EMPTY,
  put('base', { ph: number(7.8), salt: number(3000, 'mg/L as NaCl') }),
  put('other', { ph: number(7.2) }),
  put('elsewhere', { ph: number(7.0) }, true),
  { type: 'change_scenario', scenario: 'first', set: { sample: 'base' } },
  cell('first', 'diameter', number(4.572, 'm')),
  scenario('warm', 'a1', 'Warm'),
  scenario('own', 'a2', 'Own', 'other'),
  scenario('far', 'a3', 'Far', 'elsewhere'),
)

describe('where a value comes from', () => {
  test('what was typed comes first', () => {
    const typed = edited(book, cell('own', 'ph', number(7.5)))
    expect(stands(typed, 'own', 'ph')).toBe('typed 7.5')
    expect(stands(edited(typed, cell('own', 'ph', null)), 'own', 'ph')).toBe('sample 7.2')
  })

  test('then the scenario’s own sample', () => {
    expect(stands(book, 'first', 'ph')).toBe('sample 7.8')
    expect(stands(book, 'own', 'ph')).toBe('sample 7.2')
  })

  test('a reading that its sample lacks is never inherited', () => {
    expect(stands(book, 'own', 'salt')).toBe('lacking')
    expect(stands(book, 'first', 'temperature')).toBe('lacking')
  })

  test('without a sample, the baseline’s entry or reading', () => {
    expect(stands(book, 'warm', 'ph')).toBe('baseline 7.8')
    expect(stands(book, 'warm', 'diameter')).toBe('baseline 4.572')
    expect(stands(edited(book, cell('first', 'ph', number(7.4))), 'warm', 'ph')).toBe('baseline 7.4')
  })

  test('a sample of the same place inherits the pool, one of another place does not', () => {
    expect(stands(book, 'own', 'diameter')).toBe('baseline 4.572')
    expect(stands(book, 'far', 'diameter')).toBe('none')
    const typed = edited(book, cell('first', 'target_lsi', number(0.1, '1')))
    expect(stands(typed, 'far', 'target_lsi')).toBe('baseline 0.1')
  })

  test('not taken is an answer of its own, and is followed', () => {
    const marked = edited(
      book,
      cell('first', 'ph', { kind: 'not_taken' }),
      cell('first', 'target_lsi', { kind: 'not_taken' }),
    )
    expect(stands(marked, 'first', 'ph')).toBe('typed not_taken')
    expect(stands(marked, 'warm', 'ph')).toBe('baseline not_taken')
    expect(stands(marked, 'warm', 'target_lsi')).toBe('baseline not_taken')
  })

  test('a declared default stands in the baseline until something is entered', () => {
    expect(stands(book, 'first', 'target_lsi')).toBe('default 0')
    expect(stands(book, 'warm', 'target_lsi')).toBe('baseline 0')
    expect(stands(book, 'first', 'setting')).toBe('default outdoor')
    expect(stands(book, 'far', 'setting')).toBe('default outdoor')
    const indoors = edited(book, cell('first', 'setting', { kind: 'choice', id: 'indoor' }))
    expect(stands(indoors, 'warm', 'setting')).toBe('baseline indoor')
    expect(stands(indoors, 'far', 'setting')).toBe('default outdoor')
  })

  test('an input that nothing gives is nothing', () => {
    expect(stands(EMPTY, 'first', 'ph')).toBe('none')
    expect(stands(book, 'warm', 'temperature')).toBe('none')
    expect(stands(book, 'warm', 'shell')).toBe('none')
  })

  test('an assumption in the baseline is followed, but not into another water or place', () => {
    const assumed = edited(
      book,
      cell('first', 'lsi', number(0.2, '1')),
      cell('first', 'salt_used', number(3100, 'mg/L as NaCl')),
      cell('first', 'volume', number(20, 'm³')),
    )
    expect(['warm', 'own', 'far'].map((id) => stands(assumed, id, 'lsi'))).toEqual(Array(3).fill('baseline 0.2'))
    expect(['warm', 'own', 'far'].map((id) => stands(assumed, id, 'salt_used'))).toEqual([
      'baseline 3100',
      'none',
      'none',
    ])
    expect(['warm', 'own', 'far'].map((id) => stands(assumed, id, 'volume'))).toEqual([
      'baseline 20',
      'baseline 20',
      'none',
    ])
  })

  test('a scenario or quantity that is not there has nothing', () => {
    expect(stands(book, 'toString', 'ph')).toBe('none')
    expect(stands(book, 'first', 'constructor')).toBe('none')
  })
})
