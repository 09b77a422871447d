import { describe, expect, test } from 'vitest'
import { deskChecks } from '../../src/ui/desk/deskChecks'
import { hasWords } from '../../src/words/say'

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
