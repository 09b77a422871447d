import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { OUNCE, sheet, TEN_THOUSAND_GALLONS, US_FLUID_OUNCE } from './sheet'

const chlorine = sheet('chlorine')
const seed = 20_260_715
const one = { volume: TEN_THOUSAND_GALLONS, free_chlorine: 1, target_free_chlorine: 2 }
const label = (chlorine_product: string, chlorine_strength: number, chlorine_strength_basis: string) => ({
  chlorine_product,
  chlorine_strength,
  chlorine_strength_basis,
})
const HYPOCHLORITE = label('sodium_hypochlorite', 12.5, 'trade_percent')

describe('chlorine to add', () => {
  // stoichiometry of the label; handbook: 2 oz of calcium hypochlorite (from memory), the rest from its definition
  test.each([
    [HYPOCHLORITE, 'chlorine_product_volume', 10.24, US_FLUID_OUNCE],
    [label('sodium_hypochlorite', 10, 'trade_percent'), 'chlorine_product_volume', 12.8, US_FLUID_OUNCE],
    [label('calcium_hypochlorite', 65, 'available_mass_percent'), 'chlorine_product_mass', 2.05, OUNCE],
    [label('calcium_hypochlorite', 73, 'available_mass_percent'), 'chlorine_product_mass', 1.83, OUNCE],
    [label('dichlor', 56, 'available_mass_percent'), 'chlorine_product_mass', 2.38, OUNCE],
    [label('trichlor', 90, 'available_mass_percent'), 'chlorine_product_mass', 1.48, OUNCE],
  ])('%o for 1 mg/L in 10 000 US gal', (product, quantity, expected, unit) => {
    // pure dichlor dihydrate is 55.4 %: 56 is its usual label
    const strength = product.chlorine_product === 'dichlor' ? 55.4 : product.chlorine_strength
    const { number } = chlorine({ ...one, ...product, chlorine_strength: strength })
    expect(number(quantity) / unit).toBeCloseTo((expected * product.chlorine_strength) / strength, 1)
  })

  // by hand from the formulas: mg for each mg of chlorine, all of it used up
  test.each([
    ['sodium_hypochlorite', 1.648, 0, 0],
    ['calcium_hypochlorite', 0.824, 0.706, 0],
    ['dichlor', 0.824, 0, 0.91],
    ['trichlor', 0.824, 0, 0.607],
  ])('side effects of %s', (product, salt, calcium, stabilizer) => {
    const basis = 'available_mass_percent'
    const { number } = chlorine({ ...one, ...label(product, product === 'sodium_hypochlorite' ? 10 : 50, basis) })
    expect(number('salt_added')).toBeCloseTo(salt, 3)
    expect(number('calcium_added')).toBeCloseTo(calcium, 3)
    expect(number('cyanuric_acid_added')).toBeCloseTo(stabilizer, 3)
  })

  test('alkalinity when it is used up: none from hypochlorite, -0.706 from trichlor, for each mg', () => {
    const water = {
      ph: 7.5,
      temperature: 25,
      total_alkalinity: 100,
      calcium_hardness: 250,
      cyanuric_acid: 0,
      salt: 3000,
    }
    const spent = (product: object) =>
      chlorine({ ...one, ...water, target_free_chlorine: 5, ...product }).number('total_alkalinity_after_chlorine_used')
    expect(spent(HYPOCHLORITE)).toBeCloseTo(100, 2)
    // the titrated reading also sees the stabilizer's own salt, which it brings: 0.607 × 4 mg/L × about 0.3
    expect(spent(label('trichlor', 90, 'available_mass_percent'))).toBeCloseTo(100 - 4 * 0.706, 0)
  })

  test('law: never negative, and as much chlorine as is short', () => {
    const reading = fc.double({ min: 0, max: 30, noNaN: true })
    fc.assert(
      fc.property(reading, reading, fc.double({ min: 1, max: 500, noNaN: true }), (now, target, volume) => {
        const { number } = chlorine({ volume, free_chlorine: now, target_free_chlorine: target, ...HYPOCHLORITE })
        const rise = (number('chlorine_product_volume') * 125) / volume
        expect(rise).toBeGreaterThanOrEqual(0)
        expect(now + rise).toBeCloseTo(Math.max(now, target), 6)
      }),
      { seed, numRuns: 200 },
    )
  })
})

describe('strength', () => {
  test('stored hypochlorite is not what its label says', () => {
    const fresh = chlorine({ ...one, ...HYPOCHLORITE, product_age: 0 })
    expect(fresh.notices('chlorine_strength_used')).toEqual([])
    expect(chlorine({ ...one, ...HYPOCHLORITE }).notices('chlorine_strength_used')).toEqual(['label:chlorine_strength'])
    // handbook half-lives at 25 °C, from memory: 10 % is half after 220 days
    const half = chlorine({ ...one, ...label('sodium_hypochlorite', 10, 'mass_percent'), product_age: 220 })
    expect(half.number('chlorine_strength_used')).toBeCloseTo(5, 6)
  })

  test('after a year only a titration tells', () => {
    const old = chlorine({ ...one, ...HYPOCHLORITE, product_age: 400 })
    expect(old.said('chlorine_product_mass')).toContain('only a titration tells')
  })

  test('no product, no strength, no basis: no dose', () => {
    expect(chlorine(one).missing('chlorine_product_mass')).toEqual([
      'chlorine_product',
      'chlorine_strength',
      'chlorine_strength_basis',
    ])
    const product = { ...one, chlorine_product: 'trichlor' }
    expect(chlorine(product).missing('chlorine_product_mass')).toEqual(['chlorine_strength', 'chlorine_strength_basis'])
    const { missing } = chlorine({ ...product, chlorine_strength: 90 })
    expect(missing('chlorine_product_mass')).toEqual(['chlorine_strength_basis'])
  })

  test('a dry product has no volume', () => {
    expect(
      chlorine({ ...one, ...label('trichlor', 90, 'available_mass_percent') }).said('chlorine_product_volume'),
    ).toBe('A dry product is weighed; see its mass.')
  })
})

describe('breakpoint', () => {
  test('half of combined chlorine and 7.6 × ammonia, and never ten times', () => {
    const { number, notices } = chlorine({ free_chlorine: 2, total_chlorine: 2.8, ammonia: 0.1 })
    expect(number('breakpoint_dose')).toBeCloseTo(0.4 + 0.76, 9)
    expect(number('breakpoint_free_chlorine')).toBeCloseTo(3.16, 9)
    expect(notices('breakpoint_free_chlorine')).toEqual([])
    expect(chlorine({ free_chlorine: 2, total_chlorine: 2.8, ammonia: 2 }).notices('breakpoint_free_chlorine')).toEqual(
      ['over_ten:breakpoint_free_chlorine'],
    )
    expect(chlorine({ free_chlorine: 2, total_chlorine: 2.8 }).missing('breakpoint_dose')).toEqual(['ammonia'])
  })
})

describe('what is told', () => {
  test('too much already, pH first, metals first', () => {
    const told = (given: object) => chlorine({ ...one, ...HYPOCHLORITE, ...given }).notices('chlorine_product_mass')
    expect(told({ ph: 7.5 })).toEqual([])
    expect(told({ target_free_chlorine: 0.5, ph: 8 })).toEqual(['above_target:free_chlorine'])
    expect(told({ ph: 7.9 })).toEqual(['ph_first:target_free_chlorine'])
    expect(told({ ph: 7.5, target_free_chlorine: 12 })).toEqual(['ph_first:target_free_chlorine'])
    expect(told({ ph: 7.5, iron: 0.4, copper: 0.3 })).toEqual(['metals:iron', 'metals:copper'])
  })

  test.each(['bromine', 'biguanide'])('a pool kept with %s is refused', (sanitizer) => {
    const { problem } = chlorine({ ...one, ...HYPOCHLORITE, sanitizer, total_chlorine: 2, ammonia: 0 })
    for (const name of ['chlorine_product_mass', 'breakpoint_dose', 'salt_added'])
      expect(problem(name).code).toBe('not_for')
  })
})
