import fc from 'fast-check'
import { expect, test } from 'vitest'
import { calciteEquilibrium } from '../../src/chemistry/calciteEquilibrium'
import { carbonateAlkalinity } from '../../src/chemistry/carbonateAlkalinity'
import type { WaterChange } from '../../src/chemistry/changedTotals'
import { closedWater } from '../../src/chemistry/closedWater'
import { doseForTargets } from '../../src/chemistry/doseForTargets'
import { isFailure } from '../../src/chemistry/failure'
import { measuredWater } from '../../src/chemistry/measuredWater'
import { PRODUCT_IDS } from '../../src/chemistry/products'
import { titratedAlkalinity } from '../../src/chemistry/titratedAlkalinity'
import type { Water } from '../../src/chemistry/water'
import { waterAfter } from '../../src/chemistry/waterAfter'
import { waterAgainstAir } from '../../src/chemistry/waterAgainstAir'
import { waterByAir } from '../../src/chemistry/waterByAir'
import { waterForIndex } from '../../src/chemistry/waterForIndex'

const RUNS = process.env.LONG ? 1_000_000 : 25_000

/** Mostly inside the range, sometimes at its ends, over them, or no number at all. */
function reading(min: number, max: number): fc.Arbitrary<number> {
  const odd = fc.constantFrom(
    min,
    max,
    -max,
    max * 1.001,
    max * 1e6,
    0,
    1e-300,
    1e300,
    Number.NaN,
    Number.NEGATIVE_INFINITY,
  )
  // fc.double picks by exponent, so nearly all of its numbers are tiny
  const even = fc.noBias(fc.integer({ min: 0, max: 2 ** 30 })).map((step) => min + ((max - min) * step) / 2 ** 30)
  return fc.oneof(
    { weight: 80, arbitrary: even },
    { weight: 4, arbitrary: fc.double({ min, max, noNaN: true }) },
    { weight: 1, arbitrary: odd },
  )
}

/** All that is accepted, and what a pool may hold: the wide one alone seldom makes a water. */
const wide = fc.record({
  ph: reading(5, 11),
  temperature: reading(273.15, 318.15),
  titratedAlkalinity: reading(0, 0.1),
  calcium: reading(0, 0.1),
  magnesium: reading(0, 0.1),
  sulfate: reading(0, 0.2),
  chloride: reading(0, 0.8),
  borate: reading(0, 0.05),
  cyanurate: reading(0, 0.02),
  chlorine: reading(0, 0.01),
})
const pool = fc.record({
  ph: reading(5, 9),
  temperature: reading(273.15, 318.15),
  titratedAlkalinity: reading(0, 0.006),
  calcium: reading(0, 0.02),
  magnesium: reading(0, 0.02),
  sulfate: reading(0, 0.02),
  chloride: reading(0, 0.2),
  borate: reading(0, 0.005),
  cyanurate: reading(0, 0.001),
  chlorine: reading(0, 2e-4),
})
const readings = fc.oneof({ weight: 1, arbitrary: wide }, { weight: 3, arbitrary: pool })

const change: fc.Arbitrary<WaterChange> = fc.oneof(
  fc.record({
    kind: fc.constant('product' as const),
    product: fc.constantFrom(...PRODUCT_IDS),
    amount: reading(0, 0.05),
  }),
  fc.record({ kind: fc.constantFrom('carbon_dioxide' as const), amount: reading(-0.01, 0.01) }),
  fc.record({ kind: fc.constantFrom('chlorine_used' as const, 'chlorine_made' as const), amount: reading(0, 0.01) }),
  fc.record({ kind: fc.constant('evaporation' as const), share: reading(0, 0.9) }),
)

const target = fc.option(reading(6, 9), { nil: undefined })
const alkalinity = fc.option(reading(0, 0.01), { nil: undefined })

/** One question to the water; each has to answer or say why not. */
const question: fc.Arbitrary<(water: Water) => unknown> = fc.oneof(
  fc.constant((water: Water) => calciteEquilibrium(water)),
  reading(50, 5_000).map((ppm) => (water: Water) => waterAgainstAir(water, ppm)),
  reading(4.5, 11).map((ph) => (water: Water) => waterByAir(water.totals, water.temperature, ph, water.ionicStrength)),
  reading(-2, 2).map((wanted) => (water: Water) => waterForIndex(water, wanted)),
  fc.constant((water: Water) => titratedAlkalinity(water)),
  fc.array(change, { maxLength: 4 }).map((changes) => (water: Water) => waterAfter(water.totals, water, changes)),
  reading(273.15, 318.15).map((T) => (water: Water) => closedWater(water.totals, T)),
  fc.tuple(target, alkalinity, reading(0, 2e-4)).map(
    ([ph, titratedAlkalinity, chlorine]) =>
      (water: Water) =>
        doseForTargets(
          water,
          chlorine,
          { ph, titratedAlkalinity, borate: undefined },
          { acid: undefined, base: undefined, borate: undefined },
        ),
  ),
)

/** The first number inside an answer that is none. An index without calcium or carbonate is minus infinity by definition. */
function flaw(answer: unknown, path = ''): string | undefined {
  if (typeof answer === 'number') return Number.isNaN(answer) ? path : undefined
  if (typeof answer !== 'object' || answer === null) return undefined
  if (isFailure(answer)) return answer.quantity === '' ? `${path}: a failure of nothing` : undefined
  for (const [key, value] of Object.entries(answer)) {
    const found = flaw(value, `${path}.${key}`)
    if (found) return found
  }
  return undefined
}

// the fuzz is worth something only where many waters get through, and none may keep a cell waiting
test(`${RUNS} waters, good and bad: each answers, or says why not`, { timeout: 3_000_000 }, () => {
  let waters = 0
  let answers = 0
  let slowest = 0
  fc.assert(
    fc.property(readings, question, (r, ask) => {
      const start = performance.now()
      const water = measuredWater(r)
      const found = [
        flaw(water),
        flaw(carbonateAlkalinity(r.ph, r.temperature, r.titratedAlkalinity, r.cyanurate, r.borate, r.chloride)),
      ]
      if (!isFailure(water)) {
        waters++
        const answer = ask(water)
        found.push(flaw(answer))
        if (isFailure(answer) && answer.failure === 'no_convergence') found.push(JSON.stringify(answer))
        if (!isFailure(answer)) answers++
      } else if (water.failure === 'no_convergence') found.push(JSON.stringify(water))
      slowest = Math.max(slowest, performance.now() - start)
      const wrong = found.find((one) => one !== undefined)
      if (wrong !== undefined) throw new Error(wrong)
    }),
    { seed: 20_260_714, numRuns: RUNS, endOnFailure: true },
  )
  expect(waters).toBeGreaterThan(RUNS / 4)
  expect(answers).toBeGreaterThan(RUNS / 8)
  expect(slowest).toBeLessThan(1_000)
})
