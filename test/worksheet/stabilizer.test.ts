import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { readTable } from '../published/readTable'
import { OUNCE, sheet, TEN_THOUSAND_GALLONS } from './sheet'

const stabilizer = sheet('stabilizer')
const seed = 20_260_715
const water = { ph: 7.5, temperature: 25, free_chlorine: 4, cyanuric_acid: 80 }

describe('active chlorine', () => {
  test('2 mg/L as dichlor, pH 7: 0.90 unbound at 25 °C, 0.60 at 5 °C (Wahman & Alexander 2019, abstract)', () => {
    const dichlor = { ph: 7, free_chlorine: 2, cyanuric_acid: 129.075 / 70.906 }
    for (const [temperature, unbound] of [
      [25, 0.9],
      [5, 0.6],
    ] as const) {
      const { number } = stabilizer({ ...dichlor, temperature })
      expect(Math.abs(number('hocl') + number('ocl') - unbound)).toBeLessThan(0.03)
      expect(number('hocl') + number('ocl') + number('bound_chlorine')).toBeCloseTo(2, 9)
    }
  })

  // plan of the trade: FC 4, CYA 80, pH 7.5; 0.0203 by the model of 1974, wholly at 25 °C
  test('both models stand side by side', () => {
    const { number } = stabilizer(water)
    expect(number('hocl_obrien')).toBeCloseTo(0.0203, 4)
    expect(number('hocl') / number('hocl_obrien')).toBeLessThan(0.7)
    expect(stabilizer({ ...water, hocl_model: 'obrien_1974' }).number('hocl')).toBeCloseTo(0.0203, 4)
  })

  test('outside 5 to 35 °C the model of 2019 gives no verdict', () => {
    const spa = stabilizer({ ...water, temperature: 39 })
    expect(spa.problem('hocl').code).toBe('out_of_range')
    expect(spa.number('hocl_obrien')).toBeCloseTo(0.0203, 4)
  })

  test('a table of the model of 1974', () => {
    for (const { free_chlorine, cyanuric_acid, ph, hocl } of readTable('hocl-obrien-1974.csv')) {
      const found = stabilizer({ ph, temperature: 25, free_chlorine, cyanuric_acid }).number('hocl_obrien')
      expect(Math.abs(found / Number(hocl) - 1)).toBeLessThan(0.01)
    }
  })

  test('stabilizer that was not tested for is missing, not none', () => {
    expect(stabilizer({ ph: 7.5, temperature: 25, free_chlorine: 3 }).missing('hocl')).toEqual(['cyanuric_acid'])
  })
})

describe('ratio', () => {
  test('45 : 1 is where a code closes a pool, 20 : 1 the aim', () => {
    expect(stabilizer({ cyanuric_acid: 90, free_chlorine: 2 }).notices('cya_to_fc_ratio')).toEqual([])
    const over = stabilizer({ cyanuric_acid: 92, free_chlorine: 2 })
    expect(over.number('cya_to_fc_ratio')).toBe(46)
    expect(over.notices('cya_to_fc_ratio')).toEqual(['closes:cya_to_fc_ratio'])
    expect(stabilizer(water).number('fc_to_cya_share')).toBe(0.05)
  })
})

describe('for a wanted active chlorine', () => {
  test('law: that much free chlorine has it, by the same model', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.001, max: 0.5, noNaN: true }),
        fc.double({ min: 6.8, max: 8.2, noNaN: true }),
        fc.double({ min: 6, max: 34, noNaN: true }),
        fc.double({ min: 0, max: 120, noNaN: true }),
        fc.constantFrom('wahman_2019', 'obrien_1974'),
        (target, ph, temperature, cyanuric_acid, hocl_model) => {
          const given = { ph, temperature, cyanuric_acid, hocl_model, target_hocl: target }
          const free = stabilizer(given).number('free_chlorine_for_target_hocl')
          expect(stabilizer({ ...given, free_chlorine: free }).number('hocl') / target).toBeCloseTo(1, 6)
        },
      ),
      { seed, numRuns: 200 },
    )
  })

  test('models are not mixed', () => {
    const mixed = stabilizer({ ...water, target_hocl: 0.02, target_hocl_model: 'obrien_1974' })
    expect(mixed.problem('free_chlorine_for_target_hocl').code).toBe('mixed_models')
  })
})

describe('stabilizer to add', () => {
  test('13.35 oz raise 10 000 US gal by 10 mg/L (definitions of oz and gal; tables print 13)', () => {
    const { number } = stabilizer({ volume: TEN_THOUSAND_GALLONS, cyanuric_acid: 20, target_cyanuric_acid: 30 })
    expect(number('cyanuric_acid_mass') / OUNCE).toBeCloseTo(13.35, 2)
  })

  test('over the target there is none to add, and it says why', () => {
    const { number, notices } = stabilizer({ volume: 50, cyanuric_acid: 80, target_cyanuric_acid: 50 })
    expect(number('cyanuric_acid_mass')).toBe(0)
    expect(notices('cyanuric_acid_mass')).toEqual(['above_target:cyanuric_acid'])
  })

  test('0.91 and 0.61 mg come with each mg of chlorine from dichlor and trichlor (Wahman & Alexander 2019)', () => {
    const { number } = stabilizer({ chlorine_demand: 2 })
    expect(number('cyanuric_acid_from_dichlor') / 14).toBeCloseTo(0.91, 3)
    expect(number('cyanuric_acid_from_trichlor') / 14).toBeCloseTo(0.607, 3)
  })
})

test.each(['bromine', 'biguanide'])('a pool kept with %s is refused, whole', (sanitizer) => {
  const refused = stabilizer({ ...water, volume: 50, target_cyanuric_acid: 90, target_hocl: 0.02, sanitizer })
  for (const name of ['hocl', 'hocl_obrien', 'cya_to_fc_ratio', 'free_chlorine_for_target_hocl', 'cyanuric_acid_mass'])
    expect(refused.problem(name)).toMatchObject({ code: 'not_for', facts: { quantity: 'sanitizer' } })
  expect(refused.said('hocl')).toContain('this worksheet is about chlorine')
})
