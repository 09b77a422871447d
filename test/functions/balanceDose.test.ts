import { describe, expect, test } from 'vitest'
import { isFailure } from '../../src/chemistry/failure'
import type { Value } from '../../src/functions/define'
import { lockedFunction } from '../../src/functions/registry'

type Given = Readonly<Record<string, Value>>

/** One output of a whole-water function, its arguments by name. */
function answer(name: string, output: string, given: Given): unknown {
  const f = lockedFunction(name)
  if (!f || !('outputs' in f)) throw new Error(name)
  const all = f.solve(...(f.parameters.map((p) => given[p.name]) as never[]))
  return isFailure(all) ? all : all[f.outputs.findIndex((o) => o.name === output)]
}

const water = { ph: 7.8, temperature: 27, total_alkalinity: 80, calcium_hardness: 250, salt: 3200, borate: 0 }
const pool = { ...water, cyanuric_acid: 50, volume: 56.8 }
const acid = { acid_product: 'hydrochloric_acid', acid_strength: 31.45, acid_strength_basis: 'mass_percent' }

describe('BALANCE_DOSE', () => {
  const dose = (output: string, given: Given) => answer('BALANCE_DOSE', output, { ...pool, ...given })

  test('meets both targets with bicarbonate and soda ash', () => {
    const given = { ph: 7.2, free_chlorine: 3, target_ph: 7.5, target_total_alkalinity: 100 }
    expect(dose('ph_after', given)).toBeCloseTo(7.5, 6)
    expect(dose('total_alkalinity_after', given)).toBeCloseTo(100, 5)
    expect(dose('aeration_needed', given)).toBe(false)
    expect(dose('acid_equivalents', given)).toBe(0)
  })

  test('says when only aeration gets there, and gives the acid in parts', () => {
    const given = { ...acid, total_alkalinity: 140, target_ph: 7.5, target_total_alkalinity: 80, air_co2: 420 }
    expect(dose('aeration_needed', given)).toBe(true)
    expect(dose('ph_after', given)).toBeLessThan(7)
    expect(dose('ph_after_aeration', given)).toBe(7.5)
    expect(dose('total_alkalinity_after', given)).toBeCloseTo(80, 4)
    // stoichiometry: 60 mg/L of alkalinity in 56.8 m³ is 68.1 mol, 6.83 L of 31.45 % acid (20.03 mL/m³ for each 10 mg/L); up to
    // 2 % more, since with less carbonate less of it is left at the titration's end
    const plain = 6 * 56.8 * 0.02003
    expect(dose('acid_volume', given)).toBeGreaterThan(plain)
    expect(dose('acid_volume', given)).toBeLessThan(1.02 * plain)
    expect(dose('acid_doses', given)).toBe(5)
  })

  test('gives equivalents without a product, and no amount', () => {
    const given = { target_ph: 7.5 }
    expect(dose('acid_equivalents', given)).toBeGreaterThan(0)
    expect(dose('acid_volume', given)).toMatchObject({ failure: 'missing', quantity: 'acid_product' })
    expect(dose('acid_volume', { ...given, acid_product: 'hydrochloric_acid', acid_strength: 31 })).toMatchObject({
      failure: 'missing',
      quantity: 'acid_strength_basis',
    })
  })

  test('a powder has no volume', () => {
    const given = {
      target_ph: 7.5,
      acid_product: 'sodium_bisulfate',
      acid_strength: 93,
      acid_strength_basis: 'mass_percent',
    }
    expect(dose('acid_mass', given)).toBeGreaterThan(0)
    expect(dose('acid_volume', given)).toMatchObject({ failure: 'out_of_range', quantity: 'acid_product' })
  })

  test('without a target nothing is dosed', () => {
    expect(dose('acid_equivalents', {})).toMatchObject({ failure: 'missing', quantity: 'target_ph' })
  })

  test('no water has an alkalinity that its cyanurate alone exceeds', () => {
    const given = { cyanuric_acid: 300, target_ph: 7.5, target_total_alkalinity: 40, total_alkalinity: 200 }
    expect(dose('ph_after', given)).toMatchObject({ failure: 'unreachable', quantity: 'total_alkalinity' })
  })

  test('where soda ash cannot get there, caustic can', () => {
    const given = { ph: 7.6, target_ph: 8.8, target_total_alkalinity: 95 }
    expect(dose('ph_after', given)).toMatchObject({ failure: 'unreachable', quantity: 'ph' })
    expect(dose('ph_after', { ...given, base_product: 'sodium_hydroxide' })).toBeCloseTo(8.8, 6)
  })
})

describe('plan rules, computed apart from this code', () => {
  const after = 'ph_after'

  test('the cap by volume alone overshoots: pH 7.8, alkalinity 80, stabilizer 30 goes to 7.00', () => {
    const given = { ...water, cyanuric_acid: 30, add_hydrochloric_acid: 0.2494 }
    expect(Math.abs(Number(answer('WATER_AFTER', after, given)) - 7)).toBeLessThan(0.02)
  })

  test('two pounds of soda ash in 10 000 US gal take pH 7.2, alkalinity 80, stabilizer 50 to about 8.0', () => {
    const given = { ...water, ph: 7.2, cyanuric_acid: 50, add_sodium_carbonate: 0.2262 }
    expect(Math.abs(Number(answer('WATER_AFTER', after, given)) - 8)).toBeLessThan(0.05)
  })
})

describe('the bottle', () => {
  const reading = (given: Given) => answer('WATER', 'carbonate_alkalinity', { ...water, cyanuric_acid: 0, ...given })

  test('thiosulfate made 0.706 mg/L of alkalinity a mg/L of chlorine', () => {
    const taken = reading({ free_chlorine: 5, alkalinity_bottle: 'thiosulfate' })
    expect(taken).toBeCloseTo(Number(reading({ total_alkalinity: 80 - 0.70577 * 5 })), 3)
  })

  test('counted chlorine is less than its whole base, and plain chlorine nothing', () => {
    const plain = Number(reading({}))
    const counted = Number(reading({ free_chlorine: 5, alkalinity_bottle: 'chlorine_counted' }))
    expect(reading({ free_chlorine: 5 })).toBe(plain)
    expect(counted).toBeLessThan(plain)
    expect(counted).toBeGreaterThan(plain - 0.706 * 5)
  })

  test('over 10 mg/L, and with a bottle whose chlorine is not known, the reading is not used', () => {
    expect(reading({ free_chlorine: 10.1 })).toMatchObject({ failure: 'out_of_range', quantity: 'free_chlorine' })
    expect(reading({ alkalinity_bottle: 'thiosulfate' })).toMatchObject({
      failure: 'missing',
      quantity: 'free_chlorine',
    })
  })
})

test('an optional that is missing takes only its own answer away', () => {
  const given = { ...water, cyanuric_acid: 30, temperature_low: 4 }
  const of = (output: string) => answer('WATER_EQUILIBRIA', output, given)
  expect(of('ph_for_target_lsi')).toMatchObject({ failure: 'missing', quantity: 'target_lsi' })
  expect(of('ph_against_air')).toMatchObject({ failure: 'missing', quantity: 'air_co2' })
  expect(of('ccpp')).toEqual(expect.any(Number))
  expect(of('lsi_cold')).toEqual(expect.any(Number))
})
