import { describe, expect, test } from 'vitest'
import type { Outcome } from '../../src/engine/outcome'
import type { Source } from '../../src/notebook/resolve'
import { type CellFacts, cellView } from '../../src/ui/grid/cellView'
import { problem } from '../../src/words/problem'
import type { Row } from '../../src/worksheet/definition'

const ph: Row = { name: 'ph', unit: 'pH', input: 'number', accept: [0, 14], plausible: [6, 9], decimals: 2 }
const temperature: Row = { name: 'temperature', unit: '°C', input: 'number', accept: [0, 60], decimals: 1 }
const lsi: Row = { name: 'lsi', unit: '1', formula: 'ph - ph_saturation', decimals: 2 }
const band = { low: 7.2, high: 7.8, source: 'invented for this test' }

const none: Source = { from: 'none', cell: null }
const value = (of: number, notices: readonly string[] = []): Outcome => ({ value: of, notices })
const missing = (...names: string[]): Outcome => ({ problem: problem('missing', [], { names }), notices: [] })
const typed = (entered: string, unit: string, canonical: number): Source => ({
  from: 'typed',
  cell: { kind: 'value', entered, unit, canonical },
})

function view(facts: Partial<CellFacts>) {
  return cellView({ row: ph, outcome: undefined, base: undefined, source: none, unit: 'pH', band: undefined, ...facts })
}

describe('cellView', () => {
  test('has nothing to show before the engine has answered', () => {
    expect(view({})).toMatchObject({ kind: 'empty', figures: null, difference: '' })
  })

  test.each([
    ['circular', 'needs its own result'],
    ['units_flagged', 'units do not agree'],
    ['formula_refused', 'formula to be mended'],
  ])('has a word for a cell without a number: %s', (code, text) => {
    const outcome = { problem: problem(code, ['lsi'], { name: 'lsi' }), notices: [] }
    expect(view({ row: lsi, unit: '1', outcome })).toMatchObject({ kind: 'refused', text })
  })

  describe('of a row whose units do not agree', () => {
    const outcome: Outcome = { problem: problem('units_flagged', [], { name: 'lsi' }), notices: [] }
    const refusedBy = (code: string, facts: Readonly<Record<string, string | number>>) =>
      view({ row: lsi, unit: '1', outcome, refused: problem(code, ['mine.json', 'groups'], facts) })

    test('names the two', () => {
      const together = refusedBy('units_together', { at: 1, left_unit: 'kg', right_unit: 'm³' })
      expect(together).toMatchObject({ kind: 'refused', text: 'kg and m³ do not agree' })
      expect(together.said).toMatch(/^At character 1 kg and m³ meet/)
      const row = refusedBy('units_row', { wanted_unit: '1', found_unit: 'mg/L as Ca' })
      expect(row.text).toBe('a plain number and mg/L as Ca do not agree')
    })

    test('but not where it is no unit that tells them apart', () => {
      const difference = refusedBy('units_row_difference', { wanted_unit: '°C', found_unit: '°C' })
      expect(difference.text).toBe('units do not agree')
      expect(difference.said).toMatch(/gives a difference or a sum of readings/)
    })

    test('and not in a row that only reads it', () => {
      const reads = view({ row: { ...lsi, name: 'other' }, unit: '1', outcome, refused: undefined })
      expect(reads.text).toBe('units do not agree')
    })
  })

  test('keeps the decimals that were written', () => {
    const shown = (entered: string, canonical: number) =>
      view({ outcome: value(canonical), source: typed(entered, 'pH', canonical) }).figures
    expect(shown('7.4', 7.4)).toEqual({ whole: '7', fraction: '.4' })
    expect(shown('7.405', 7.405)).toEqual({ whole: '7', fraction: '.405' })
  })

  test('shows what was written in another unit in the unit of the row', () => {
    // 15 °C is 59 °F by definition of the scales
    const source = typed('15', '°C', 15)
    const { figures } = view({ row: temperature, outcome: value(15), source, unit: '°F' })
    expect(figures).toEqual({ whole: '59', fraction: '.0' })
  })

  test('gives the difference from the baseline, a dot where there is none, nothing in the baseline', () => {
    expect(view({ outcome: value(7.4), base: value(7.8) }).difference).toBe('−0.40')
    expect(view({ outcome: value(7.8), base: value(7.8) }).difference).toBe('·')
    expect(view({ outcome: value(7.8), base: value(7.800001) }).difference).toBe('·')
    expect(view({ outcome: value(7.8) }).difference).toBe('')
    expect(view({ outcome: value(7.8), base: missing('ph') }).difference).toBe('')
  })

  test('says on which side of the band a value lies', () => {
    expect(view({ outcome: value(7.9), band })).toMatchObject({ side: 'above', said: 'above the range' })
    expect(view({ outcome: value(7.8), band })).toMatchObject({ side: 'within', said: '' })
    expect(view({ outcome: value(7.9) }).side).toBeNull()
  })

  test('questions an unlikely entry and keeps it', () => {
    const { notices, figures } = view({ outcome: value(9.9), source: typed('9.9', 'pH', 9.9) })
    expect(notices).toEqual(['unlikely:ph'])
    expect(figures?.whole).toBe('9')
  })

  test('names the readings that a result waits for: two in the cell, all for a screen reader', () => {
    expect(view({ row: lsi, unit: '1', outcome: missing('ph', 'temperature') })).toMatchObject({
      kind: 'needs',
      text: 'needs pH, temperature',
      figures: null,
    })
    const many = view({ row: lsi, unit: '1', outcome: missing('ph', 'temperature', 'salt|chloride') })
    expect(many.text).toBe('needs pH, temperature and 1 more')
    expect(many.said).toBe('needs pH, temperature, salt or chloride')
  })

  test('an input that was not taken is no zero', () => {
    const notTaken: Source = { from: 'typed', cell: { kind: 'not_taken' } }
    expect(view({ outcome: missing('ph'), source: notTaken })).toMatchObject({ kind: 'not_taken', said: 'not taken' })
    expect(view({ outcome: missing('ph') })).toMatchObject({ kind: 'empty', figures: null })
  })

  test('marks what was typed over a worked-out row', () => {
    expect(view({ row: lsi, unit: '1', outcome: value(0.1), source: typed('0.1', '1', 0.1) }).assumed).toBe(true)
    expect(view({ row: lsi, unit: '1', outcome: value(0.1) }).assumed).toBe(false)
  })
})
