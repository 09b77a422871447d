import { describe, expect, test } from 'vitest'
import { deskChecks } from '../../src/ui/desk/deskChecks'
import { isUnlikely } from '../../src/ui/desk/unlikely'
import { hasWords } from '../../src/words/say'
import { shippedOutline } from '../../src/worksheet/shippedOutline'

const keys = (readings: Readonly<Record<string, number>>) =>
  deskChecks((quantity) => readings[quantity]).map(({ beside, key }) => `${beside}: ${key}`)

describe('readings held against each other', () => {
  test('total chlorine holds free chlorine in it, and total hardness calcium', () => {
    expect(keys({ free_chlorine: 3, total_chlorine: 2 })).toEqual(['total_chlorine: total_below_free'])
    // one drop of a titration in 25 mL is 0.2 (from memory): that little is the test's own error
    expect(keys({ free_chlorine: 3, total_chlorine: 2.8 })).toEqual([])
    expect(keys({ calcium_hardness: 300, total_hardness: 250 })).toEqual(['total_hardness: calcium_over_total'])
    expect(keys({ total_hardness: 250 })).toEqual(['total_hardness: hardness_alone'])
    expect(keys({ calcium_hardness: 200, total_hardness: 250 })).toEqual([])
  })

  test('the pool’s temperature counts, and an old bottle has lost its chlorine', () => {
    expect(keys({ bottle_temperature: 22 })).toEqual(['temperature: bottle_alone'])
    expect(keys({ bottle_temperature: 22, temperature: 29 })).toEqual(['bottle_temperature: warmed'])
    expect(keys({ bottle_temperature: 22, temperature: 25 })).toEqual([])
    expect(keys({ sample_age: 3 })).toEqual(['sample_age: old'])
    expect(keys({ sample_age: 2 })).toEqual([])
  })

  test('much chlorine spoils the dyes of pH and alkalinity', () => {
    expect(keys({ free_chlorine: 11 })).toEqual(['ph: dyes_err'])
  })

  test('the pool’s own figures: a window the wrong way round, and salt in another unit where a cell lives on it', () => {
    const cell = { cell_salt_low: 2700, cell_salt_high: 3400, cell_output: 14 }
    expect(keys(cell)).toEqual([])
    expect(keys({ cell_salt_low: 3400, cell_salt_high: 2700 })).toEqual(['cell_salt_high: window_turned'])
    expect(keys({ cell_salt_low: 3400, cell_salt_high: 3400 })).toEqual(['cell_salt_high: window_turned'])
    expect(keys({ ...cell, salt: 2.7 })).toEqual(['salt: hardly_salt'])
    expect(keys({ cell_output: 14, salt: 2.7 })).toEqual(['salt: hardly_salt'])
    // a new pool has none, and one without a cell little
    expect(keys({ ...cell, salt: 0 })).toEqual([])
    expect(keys({ ...cell, salt: 100 })).toEqual([])
    expect(keys({ salt: 60 })).toEqual([])
  })

  test.each([
    ['measured_volume', 15 * 0.003785, 57],
    ['measured_volume', 15e6 * 0.003785, 2500],
    ['bag_mass', 4000 * 0.4536, 18],
    ['cell_output', 1400, 14],
    ['cell_salt_low', 2.7, 2700],
    ['cell_salt_high', 34000, 3400],
  ])('%s %d is asked about, %d is not', (quantity, wrong, usual) => {
    const row = shippedOutline().quantities.get(quantity)?.row
    const value = (canonical: number) => ({ kind: 'value', entered: '', unit: '', canonical }) as const
    expect([isUnlikely(row, value(wrong)), isUnlikely(row, value(usual)), isUnlikely(row, null)]).toEqual([
      true,
      false,
      false,
    ])
  })

  test('nothing taken, nothing doubted; every doubt has its sentence', () => {
    expect(keys({})).toEqual([])
    const all = [
      ...deskChecks((quantity) => (quantity === 'calcium_hardness' ? undefined : 12)),
      ...deskChecks(
        (quantity) => ({ free_chlorine: 3, total_chlorine: 1, calcium_hardness: 9, total_hardness: 1 })[quantity],
      ),
    ]
    expect(all.filter(({ key }) => !hasWords(`page.desk.check.${key}`))).toEqual([])
  })
})
