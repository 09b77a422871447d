import { describe, expect, test } from 'vitest'
import { changeRules } from '../../src/planner/changeRules'
import type { Plan } from '../../src/planner/step'
import { POOL, plan, type Values, without } from './bench'

const FILL: Values = {
  fill_ph: 7.7,
  fill_temperature: 14,
  fill_total_alkalinity: 90,
  fill_calcium_hardness: 110,
  fill_salt: 0,
  fill_cyanuric_acid: 0,
}
const doses = (made: Plan, product: string) => made.steps.filter((s) => s.kind === 'dose' && s.product === product)

/** The share of the water that is new after all rounds: 1 - product of what each leaves. */
function renewed(made: Plan): number {
  const rounds = made.steps.filter(({ kind }) => kind === 'dilute')
  return 1 - rounds.reduce((left, { amount }) => left * (1 - (amount?.value ?? 0) / 56.8), 1)
}

describe('over-salted water', () => {
  test('goes to the top of the window less the test’s error', () => {
    const made = plan({ ...POOL, salt: 5200, ...FILL })
    // by hand: (5200 - 3200) / 5200 = 38.5 %
    expect(renewed(made)).toBeGreaterThan(0.384)
    expect(renewed(made)).toBeLessThan(0.392)
    expect(made.verdicts.find(({ quantity }) => quantity === 'salt')?.verdict).toBe('step')
  })

  test('is not drained where the fill water is saltier than the limit, and the plan says so', () => {
    const made = plan({ ...POOL, salt: 5200, ...FILL, fill_salt: 3600 })
    expect(made.steps.some(({ kind }) => kind === 'dilute')).toBe(false)
    expect(made.unmet.find(({ quantity }) => quantity === 'salt')?.problem.code).toBe('unreachable')
  })

  test('after filling with water that was not tested, nothing rests on what is not known', () => {
    const made = plan({ ...POOL, salt: 5200, fill_salt: 0 })
    expect(made.complete).toBe(false)
    expect(made.end.has('ph')).toBe(false)
    expect(made.steps.some(({ kind }) => kind === 'cell')).toBe(false)
    expect(made.verdicts.find(({ quantity }) => quantity === 'ph')?.verdict).toBe('test_again')
  })
})

test('a limit under the target is named, and the water is not drained for it', () => {
  const made = plan({ ...POOL, most_salt: 2000, ...FILL })
  expect(made.steps).toEqual([])
  expect(made.unmet.map(({ quantity }) => quantity)).toEqual(['most_salt'])
})

test('a cell that alone says low gets a test, not salt', () => {
  const made = plan({ ...POOL, salt: undefined, cell_salt_reading: 2100 })
  expect(doses(made, 'salt')).toEqual([])
  expect(made.steps[0]?.says.key).toBe('plan.retest.salt_alarm')
})

test('a spa gets no stabilizer, whatever the target', () => {
  const made = plan({ ...POOL, water_body: 'spa', cyanuric_acid: 0, target_cyanuric_acid: 30 })
  expect(doses(made, 'cyanuric_acid')).toEqual([])
  expect(made.verdicts.find(({ quantity }) => quantity === 'cyanuric_acid')?.verdict).toBe('do_not_buy')
})

test('a vinyl wall has no calcium to lose', () => {
  const made = plan({ ...POOL, calcium_hardness: 170, target_calcium_hardness: undefined })
  expect(doses(made, 'calcium_chloride')).toEqual([])
  expect(made.verdicts.find(({ quantity }) => quantity === 'calcium_hardness')?.verdict).toBe('do_not_buy')
})

test('a target that is missing is named, and nothing is dosed for it', () => {
  const made = plan({ ...POOL, ph: 8.2, target_ph: undefined })
  expect(doses(made, 'hydrochloric_acid')).toEqual([])
  expect(made.verdicts.find(({ quantity }) => quantity === 'ph')?.reason).toMatchObject({
    key: 'plan.verdict.no_target_high',
    facts: { names: ['target_ph'] },
  })
})

test('a product without a strength is named, and not dosed', () => {
  const made = plan({ ...POOL, ph: 7.9, acid_strength: undefined })
  expect(doses(made, 'hydrochloric_acid')).toEqual([])
  expect(made.unmet.find(({ quantity }) => quantity === 'ph')?.problem.facts.names).toEqual(['acid_strength'])
})

test('stabilizer that was not tested stops what is computed with it', () => {
  const made = plan({ ...POOL, ph: 7.9, cyanuric_acid: undefined, target_cyanuric_acid: undefined })
  expect(doses(made, 'hydrochloric_acid')).toEqual([])
  expect(made.unmet.find(({ quantity }) => quantity === 'ph')?.problem.facts.names).toEqual(['cyanuric_acid'])
})

test('alone, a salt reading and a volume are enough for salt', () => {
  const made = plan({ volume: 56.8, volume_low: 56.8, volume_high: 56.8, salt: 1000, target_salt: 3200 })
  const [one, two] = doses(made, 'salt')
  // by hand: 2200 mg/L x 56.8 m³ = 124.96 kg
  expect((one?.amount?.value ?? 0) + (two?.amount?.value ?? 0)).toBeCloseTo(124.96, 0)
  expect(made.end.get('salt')).toBeCloseTo(3200, -2)
})

describe('products on hand', () => {
  const pool = { ...POOL, ph: 7.9 }
  const muriatic = {
    role: 'acid',
    product: 'hydrochloric_acid',
    strength: 31.45,
    basis: 'mass_percent',
    pack: 3.785,
  } as const
  const dry = { role: 'acid', product: 'sodium_bisulfate', strength: 93.2, basis: 'mass_percent', pack: 2.5 } as const

  test('the cheapest for this need is taken, and the runner-up named', () => {
    const made = plan(pool, {
      shelf: [
        { ...dry, price: 12 },
        { ...muriatic, price: 8 },
      ],
    })
    const [step] = doses(made, 'hydrochloric_acid')
    expect(step?.cost?.cost).toBeCloseTo((8 * (step?.amount?.value ?? 0)) / 3.785, 6)
    expect(step?.cost?.runnerUp?.product).toBe('sodium_bisulfate')
    expect(step?.cost?.runnerUp?.cost).toBeGreaterThan(step?.cost?.cost ?? Number.POSITIVE_INFINITY)
    expect(made.cost).toBeCloseTo(step?.cost?.cost ?? 0, 9)
  })

  test('the price decides, not the order', () => {
    const made = plan(pool, {
      shelf: [
        { ...muriatic, price: 80 },
        { ...dry, price: 2 },
      ],
    })
    expect(doses(made, 'sodium_bisulfate')).toHaveLength(1)
  })

  test('without every price there is no cost, and the first is taken', () => {
    const made = plan(pool, { shelf: [muriatic, { ...dry, price: 2 }] })
    expect(doses(made, 'hydrochloric_acid')[0]?.cost).toBeUndefined()
    expect(made.cost).toBeUndefined()
  })
})

describe('chlorine under the least where alkalinity has to come down first', () => {
  test('goes in on the first day, after the first acid and an hour apart, not after days of air', () => {
    const { steps } = plan({ ...POOL, free_chlorine: 1.5, total_chlorine: 1.6, ph: 7.9, total_alkalinity: 130 })
    const first = (product: string) => steps.find((step) => step.product === product)
    const chlorine = first('sodium_hypochlorite')
    const acid = first('hydrochloric_acid')
    expect(chlorine?.at).toBeLessThan(24)
    expect((chlorine?.at ?? 0) - (acid?.at ?? 0)).toBeGreaterThanOrEqual(1)
    expect(steps.findIndex(({ says }) => says.key === 'plan.step.aerate')).toBeGreaterThan(
      steps.findIndex(({ product }) => product === 'sodium_hypochlorite'),
    )
  })
})

test('no base takes the alkalinity past its target by more than the test’s error, whatever the base', () => {
  const low = { ...POOL, ph: 7.0, total_alkalinity: 50, target_ph: 7.6, base_product: 'sodium_bicarbonate' }
  const made = plan(low, { rules: without('weak_base') })
  expect(doses(made, 'sodium_bicarbonate').length).toBeGreaterThan(1)
  for (const { water } of made.steps) expect(Number(water.get('total_alkalinity'))).toBeLessThanOrEqual(90 + 1e-6)
})

describe('a pH that a test would hardly tell from its target', () => {
  // 7.48 once all of the salt is in: the same water had no step where no salt was to go in
  const salted: Values = { ...POOL, ph: 7.5, target_ph: 7.6, salt: 2900, base_product: 'sodium_carbonate' }

  test('gets no base, whether it was read so or is foretold so', () => {
    for (const pool of [salted, { ...salted, salt: 3200 }, { ...salted, salt: 3200, ph: 7.48 }]) {
      const made = plan(pool)
      expect(doses(made, 'sodium_carbonate')).toEqual([])
      expect(made.verdicts.find(({ quantity }) => quantity === 'ph')?.verdict).toBe('nothing')
    }
  })

  test('is named where the end stands under its target by more than the test’s error', () => {
    const made = plan(salted)
    expect(Number(made.end.get('ph'))).toBeLessThan(7.5)
    expect(made.unmet.map(({ quantity }) => quantity)).toContain('ph')
  })

  test('where a copy of the rules asks for one error, it gets its base', () => {
    const { rules } = changeRules({ 'base_cap.least_errors': 1 })
    expect(doses(plan(salted, { rules }), 'sodium_carbonate').length).toBeGreaterThan(0)
  })

  test('two errors under it, it gets its base', () => {
    expect(doses(plan({ ...salted, salt: 3200, ph: 7.4 }), 'sodium_carbonate').length).toBeGreaterThan(0)
  })
})

describe('stabilizer is an acid', () => {
  const none: Values = { ...POOL, volume: 50, volume_low: 50, volume_high: 50, cyanuric_acid: 0, target_ph: 7.6 }

  test('it goes in by no more than the floor of the pH allows, each part after the pH is back and tested', () => {
    const made = plan(none)
    const parts = doses(made, 'cyanuric_acid')
    expect(parts.length).toBeGreaterThan(2)
    for (const { water } of parts) expect(Number(water.get('ph'))).toBeGreaterThanOrEqual(7.2)
    const first = made.steps.findIndex(({ product }) => product === 'cyanuric_acid')
    const between = made.steps.slice(
      first + 1,
      made.steps.findIndex(({ product }, i) => i > first && product === 'cyanuric_acid'),
    )
    expect(between[0]).toMatchObject({ kind: 'wait', wait: 48, says: { key: 'plan.step.stabilizer_acid' } })
    expect(between.some(({ kind, retest }) => kind === 'retest' && retest.includes('ph'))).toBe(true)
    // by hand: 50 mg/L x 50 m³ = 2.5 kg in all
    expect(parts.reduce((sum, { amount }) => sum + (amount?.value ?? 0), 0)).toBeCloseTo(2.5, 1)
  })

  test('and needs neither air for an alkalinity that is on target, nor a base', () => {
    const made = plan(none)
    expect(made.steps.some(({ says }) => says.key === 'plan.step.aerate')).toBe(false)
    expect(doses(made, 'sodium_carbonate')).toEqual([])
    expect(made.unmet).toEqual([])
  })

  test('without its rule it would go in at once', () => {
    const made = plan(none, { rules: without('stabilizer') })
    expect(doses(made, 'cyanuric_acid').length).toBeLessThan(3)
  })
})
