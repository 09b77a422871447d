import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { measurable } from '../../src/planner/measurable'
import { RULES } from '../../src/planner/rules'
import type { Plan } from '../../src/planner/step'
import { POUND, US_FLUID_OUNCE, US_GALLON } from '../worksheet/sheet'
import { POOL, plan, type Values } from './bench'

const OUNCE = POUND / 16
const US = { ...RULES, measurable: RULES.measurableUs }
const amounts = (made: Plan) => made.steps.flatMap(({ amount, product }) => (amount ? [{ ...amount, product }] : []))
const CORRECTING: Values = {
  ph: 7.9,
  salt: 1900,
  calcium_hardness: 180,
  cyanuric_acid: 20,
  free_chlorine: 1,
  total_chlorine: 1,
}

describe('in a US kitchen', () => {
  // by hand, from the definitions of NIST SP 811: what a scale in ounces and a jug in fluid ounces and cups can tell
  test.each([
    ['kg', 3.31 * POUND, 3 * POUND + 4 * OUNCE],
    ['kg', 12.4 * POUND, 12.25 * POUND],
    ['kg', 130.9 * POUND, 130 * POUND],
    ['kg', 0.55 * OUNCE, 0.5 * OUNCE],
    ['L', 9.9 * US_FLUID_OUNCE, 9.5 * US_FLUID_OUNCE],
    ['L', 1.4 * 128 * US_FLUID_OUNCE, 1.375 * 128 * US_FLUID_OUNCE],
  ] as const)('%s: %f is rounded down to %f', (unit, amount, rounded) => {
    expect(measurable(US, amount, unit)).toBeCloseTo(rounded, 6)
  })

  test('an amount is never rounded up, in either profile, and never off by more than an eighth', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.06, max: 500, noNaN: true }), fc.constantFrom('kg', 'L'), (amount, unit) => {
        for (const rules of [RULES, US]) {
          const found = measurable(rules, amount, unit)
          expect(found).toBeLessThanOrEqual(amount + 1e-6)
          expect(found).toBeGreaterThan(amount * 0.875)
        }
      }),
      { seed: 20_261_125, numRuns: 2_000 },
    )
  })

  test('every dose of a plan is whole ounces or fluid ounces there, and the water is foretold with it', () => {
    const made = plan({ ...POOL, ...CORRECTING, bag_mass: undefined }, { profile: 'us' })
    expect(amounts(made).length).toBeGreaterThan(4)
    for (const { value, unit, product } of amounts(made)) {
      const small = unit === 'kg' ? OUNCE : US_FLUID_OUNCE
      const part = value >= small * 4 ? 4 : 20
      const counted = (value / small) * part
      expect(Math.abs(counted - Math.round(counted)), `${product}: ${value} ${unit}`).toBeLessThan(1e-3)
    }
    const salt = made.steps.find(({ product }) => product === 'salt')
    // by hand: kilograms in 56.8 m³ are so many mg/L
    expect(Number(salt?.water.get('salt'))).toBeGreaterThan(1900 + ((salt?.amount?.value ?? 0) * 1000) / 56.8 - 1)
  })

  test('the two profiles differ by no more than what can be measured', () => {
    const [metric, us] = [plan({ ...POOL, ph: 7.9 }), plan({ ...POOL, ph: 7.9 }, { profile: 'us' })]
    const of = (made: Plan) => amounts(made).find(({ product }) => product === 'hydrochloric_acid')?.value ?? 0
    expect(of(metric)).not.toBe(of(us))
    expect(Math.abs(of(metric) - of(us))).toBeLessThan(US_FLUID_OUNCE)
    expect(US_GALLON).toBeCloseTo(128 * US_FLUID_OUNCE * 0.001, 12)
  })
})

describe('packs', () => {
  const PACKS: Values = {
    acid_pack_volume: 0.3,
    chlorine_pack_volume: 1,
    calcium_pack_mass: 2,
    stabilizer_pack_mass: 0.5,
    bag_mass: 18.14,
  }
  test('whole packs and a measured rest, for every product whose pack is known', () => {
    const made = plan({ ...POOL, ...CORRECTING, ...PACKS })
    const sizes: Record<string, number> = {
      hydrochloric_acid: 0.3,
      sodium_hypochlorite: 1,
      calcium_chloride: 2,
      cyanuric_acid: 0.5,
      salt: 18.14,
    }
    const seen = new Set<string>()
    for (const { product = '', value, packs } of amounts(made)) {
      if (!(product in sizes)) continue
      seen.add(product)
      expect(packs?.pack, product).toBe(sizes[product])
      expect((packs?.whole ?? 0) * (packs?.pack ?? 0) + (packs?.rest ?? 0)).toBeCloseTo(value, 6)
    }
    expect([...seen].toSorted()).toEqual(Object.keys(sizes).toSorted())
  })
  test('a pack that is not known is none', () => {
    const made = plan({ ...POOL, ph: 7.9, acid_pack_mass: 2 })
    expect(amounts(made).find(({ product }) => product === 'hydrochloric_acid')?.packs).toBeUndefined()
  })
})

describe('swim again', () => {
  test('after the step from which chlorine and pH are where the code has them, and a new test', () => {
    const made = plan({ ...POOL, ph: 8.1, free_chlorine: 0.5, total_chlorine: 0.5 })
    expect(made.swim.now).toBe('no')
    const after = made.swim.after ?? 0
    const waters = made.steps
      .slice(after - 1)
      .map(({ water }) => [Number(water.get('ph')), Number(water.get('free_chlorine'))])
    for (const [ph = 0, free = 0] of waters) {
      expect(ph).toBeGreaterThanOrEqual(7.2)
      expect(ph).toBeLessThanOrEqual(7.8)
      expect(free).toBeGreaterThanOrEqual(1)
    }
    const before = made.steps[after - 2]?.water
    expect(Number(before?.get('ph')) > 7.8 || Number(before?.get('free_chlorine')) < 2).toBe(true)
  })
  test('nothing foretells a floor that cannot be seen', () => {
    const made = plan({ ...POOL, ph: 8.1, water_look: 'cloudy' })
    expect(made.swim.reasons.map(({ key }) => key)).toContain('plan.swim.floor')
    expect(made.swim.after).toBeUndefined()
  })
})

test('water that leaves is tested first: chlorine and pH', () => {
  const made = plan({
    ...POOL,
    salt: 5200,
    fill_salt: 0,
    fill_ph: 7.7,
    fill_temperature: 14,
    fill_total_alkalinity: 90,
    fill_calcium_hardness: 110,
    fill_cyanuric_acid: 0,
  })
  const drained = made.steps.findIndex(({ kind }) => kind === 'dilute')
  expect(made.steps[drained - 1]).toMatchObject({
    kind: 'retest',
    says: { key: 'plan.retest.discharge', facts: { most: 0.1, low: 6.5, high: 8.5 } },
  })
  expect(made.steps[drained]?.cautions.map(({ key }) => key)).toContain('plan.caution.out_of_water')
})
