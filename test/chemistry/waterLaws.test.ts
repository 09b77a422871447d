import fc from 'fast-check'
import { describe, expect, test, vi } from 'vitest'
import { standardMethodsPfm } from '../../src/chemistry/activity'
import { calciteEquilibrium } from '../../src/chemistry/calciteEquilibrium'
import type { WaterChange } from '../../src/chemistry/changedTotals'
import { readingWithoutChlorine, withChlorine } from '../../src/chemistry/chlorineInWater'
import { closedWater } from '../../src/chemistry/closedWater'
import { doseForTargets } from '../../src/chemistry/doseForTargets'
import { pKCarbonic2, pKHypochlorous } from '../../src/chemistry/equilibriumConstants'
import { isFailure } from '../../src/chemistry/failure'
import { langelierIndex } from '../../src/chemistry/langelierIndex'
import { type Measured, measuredWater } from '../../src/chemistry/measuredWater'
import { PRODUCT_IDS } from '../../src/chemistry/products'
import { saturationPh } from '../../src/chemistry/saturationPh'
import { LIGANDS, METALS, SPECIES } from '../../src/chemistry/species'
import { titratedAlkalinity } from '../../src/chemistry/titratedAlkalinity'
import type { Water } from '../../src/chemistry/water'
import { waterAfter } from '../../src/chemistry/waterAfter'
import { waterAgainstAir } from '../../src/chemistry/waterAgainstAir'
import { waterAtPh } from '../../src/chemistry/waterAtPh'
import { waterByAir } from '../../src/chemistry/waterByAir'
import { waterForIndex } from '../../src/chemistry/waterForIndex'
import { AS_ALKALINITY, AS_CALCIUM, number } from './referenceWater'

// a thousand waters a law take a second, but not on a machine that does other things too
vi.setConfig({ testTimeout: 60_000 })

const RUNS = { seed: 20_260_714, numRuns: 1_000, endOnFailure: true }
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true })

/** Readings that a pool can have, in the units of the trade, turned into moles. */
const readings: fc.Arbitrary<Measured> = fc
  .record({
    ph: between(6.5, 8.8),
    t: between(0, 45),
    alkalinity: between(60, 300),
    calcium: between(20, 1_000),
    salt: between(0, 7_000),
    cyanuric: fc.oneof(fc.constant(0), between(0.001, 80)),
    boron: fc.oneof(fc.constant(0), between(0.001, 50)),
    magnesium: fc.oneof(fc.constant(0), between(0.001, 100)),
    sulfate: fc.oneof(fc.constant(0), between(0.001, 600)),
  })
  .map((r) => ({
    ph: r.ph,
    temperature: r.t + 273.15,
    titratedAlkalinity: r.alkalinity / AS_ALKALINITY,
    calcium: r.calcium / AS_CALCIUM,
    magnesium: r.magnesium / 24_305,
    sulfate: r.sulfate / 96_056,
    chloride: r.salt / 58_443,
    borate: r.boron / 10_810,
    cyanurate: r.cyanuric / 129_075,
    chlorine: 0,
  }))

/** The law holds for every water of the readings that exists. */
function holds(law: (water: Water, readings: Measured) => void): void {
  fc.assert(
    fc.property(readings, (r) => {
      const water = measuredWater(r)
      fc.pre(!isFailure(water) && water.carbonateAlkalinity > 1e-4)
      law(number(water), r)
    }),
    RUNS,
  )
}

function imbalances(water: Water): number[] {
  const { totals, species } = water
  const sum = (weight: (s: (typeof SPECIES)[number]) => number) =>
    SPECIES.reduce((total, s, i) => total + weight(s) * (species[i] ?? 0), 0)
  const charge = sum((s) => s.charge) - totals.chloride + totals.inert
  const charges = sum((s) => Math.abs(s.charge)) + totals.chloride
  const alkalinity = sum((s) => s.base) - totals.alkalinity
  const parts = [...METALS, ...LIGANDS].map((part) => {
    const found = sum((s) => (part === 'chlorine' ? s.hocl : 0) + (s.metal === part || s.ligand === part ? 1 : 0))
    return totals[part] === 0 ? found : found / totals[part] - 1
  })
  return [charge / charges, alkalinity / Math.abs(totals.alkalinity), ...parts].map(Math.abs)
}

describe('balances to 1e-9', () => {
  test('of a measured water', () => holds((water) => expect(Math.max(...imbalances(water))).toBeLessThan(1e-9)))

  test('of every water that is made from one', () =>
    holds((water) => {
      const made = [
        number(closedWater(number(withChlorine(water, 1e-4)), water.temperature)),
        number(calciteEquilibrium(water)).water,
        number(waterAgainstAir(water, 420)),
        number(waterAtPh(water, 7.2)),
        number(waterByAir(water.totals, water.temperature, 7, water.ionicStrength)),
      ]
      for (const one of made) expect(Math.max(...imbalances(one))).toBeLessThan(1e-9)
    }))
})

describe('the same water again', () => {
  test('in the titration that it was made from', () =>
    holds((water, readings) => expect(titratedAlkalinity(water) / readings.titratedAlkalinity).toBeCloseTo(1, 9)))

  test('from its conserved quantities', () =>
    holds((water) => {
      const again = number(closedWater(water.totals, water.temperature, 5))
      expect(again.ph).toBeCloseTo(water.ph, 8)
      expect(titratedAlkalinity(again) / titratedAlkalinity(water)).toBeCloseTo(1, 8)
    }))

  test('with its chlorine reckoned in, and its reading with it left out', () =>
    holds((water) => {
      const again = number(waterAfter(number(withChlorine(water, 5e-5)), water, []))
      expect(again.ph).toBeCloseTo(water.ph, 8)
      expect(number(readingWithoutChlorine(again)) / titratedAlkalinity(water)).toBeCloseTo(1, 8)
    }))

  test('from a reading in which its chlorine counted', () =>
    holds((water) => {
      const totals = number(withChlorine(water, 5e-5))
      const full = number(closedWater(totals, water.temperature, water.ph))
      const again = number(
        measuredWater({ ...full, ...totals, titratedAlkalinity: titratedAlkalinity(full), chlorine: 5e-5 }),
      )
      expect(again.totals.carbonate / water.totals.carbonate).toBeCloseTo(1, 7)
    }))
})

describe('additions', () => {
  const products = fc.array(
    fc.record({
      kind: fc.constant('product' as const),
      product: fc.constantFrom(...PRODUCT_IDS),
      amount: between(0, 2e-4),
    }),
    { minLength: 1, maxLength: 4 },
  )

  test('commute', () => {
    fc.assert(
      fc.property(readings, products, (r, changes) => {
        const water = measuredWater(r)
        fc.pre(!isFailure(water))
        const start = number(withChlorine(number(water), 3e-5))
        const one = waterAfter(start, number(water), changes)
        const other = waterAfter(start, number(water), [...changes].reverse())
        fc.pre(!isFailure(one))
        expect(number(other).ph).toBeCloseTo(number(one).ph, 8)
        expect(number(other).totals.chlorine).toBeCloseTo(number(one).totals.chlorine, 14)
      }),
      RUNS,
    )
  })

  test('in two halves are the whole', () =>
    holds((water) => {
      const dose = (amount: number): WaterChange[] => [{ kind: 'product', product: 'sodium_carbonate', amount }]
      const half = number(waterAfter(water.totals, water, dose(1e-4)))
      const whole = number(waterAfter(water.totals, water, dose(2e-4)))
      expect(number(waterAfter(half.totals, half, dose(1e-4))).ph).toBeCloseTo(whole.ph, 8)
    }))

  test('hypochlorite that is used up was two of salt', () =>
    holds((water) => {
      const bleach: WaterChange[] = [
        { kind: 'product', product: 'sodium_hypochlorite', amount: 1e-4 },
        { kind: 'chlorine_used', amount: 1e-4 },
      ]
      const salt: WaterChange[] = [{ kind: 'product', product: 'salt', amount: 2e-4 }]
      const after = number(waterAfter(water.totals, water, bleach))
      expect(after.ph).toBeCloseTo(number(waterAfter(water.totals, water, salt)).ph, 8)
    }))

  test('acid lowers pH, base and loss of CO2 raise it', () =>
    holds((water) => {
      const result = (change: WaterChange) => number(waterAfter(water.totals, water, [change])).ph
      expect(result({ kind: 'product', product: 'hydrochloric_acid', amount: 1e-5 })).toBeLessThan(water.ph)
      expect(result({ kind: 'product', product: 'sodium_hydroxide', amount: 1e-5 })).toBeGreaterThan(water.ph)
      expect(result({ kind: 'carbon_dioxide', amount: -1e-6 })).toBeGreaterThan(water.ph)
    }))
})

describe('dilution and evaporation', () => {
  test('nothing replaced is nothing changed, everything replaced is the fill water', () => {
    fc.assert(
      fc.property(readings, readings, (a, b) => {
        const water = measuredWater(a)
        const fill = measuredWater({ ...b, temperature: a.temperature })
        fc.pre(!isFailure(water) && !isFailure(fill))
        const result = (share: number) =>
          number(
            waterAfter(number(water).totals, number(water), [{ kind: 'dilution', share, fill: number(fill).totals }]),
          )
        expect(result(0).ph).toBeCloseTo(number(water).ph, 8)
        expect(result(1).ph).toBeCloseTo(number(fill).ph, 8)
      }),
      RUNS,
    )
  })

  test('evaporation is undone by pure water', () =>
    holds((water) => {
      const pure = { ...water.totals }
      for (const name of Object.keys(pure) as (keyof typeof pure)[]) pure[name] = 0
      const after = waterAfter(water.totals, water, [
        { kind: 'evaporation', share: 0.2 },
        { kind: 'dilution', share: 0.2, fill: pure },
      ])
      expect(number(after).ph).toBeCloseTo(water.ph, 8)
    }))
})

describe('a dose solved back meets its target run forward', () => {
  const targets = fc.record({
    ph: fc.option(between(7, 8), { nil: undefined }),
    alkalinity: fc.option(between(60, 200), { nil: undefined }),
    chlorine: fc.constantFrom(0, 4e-5),
    acid: fc.constantFrom('hydrochloric_acid' as const, 'sulfuric_acid' as const, 'sodium_bisulfate' as const),
    base: fc.constantFrom(
      undefined,
      'sodium_carbonate' as const,
      'sodium_bicarbonate' as const,
      'sodium_hydroxide' as const,
    ),
  })

  test('or says what is in the way', () => {
    let met = 0
    fc.assert(
      fc.property(readings, targets, (r, { ph, alkalinity, chlorine, acid, base }) => {
        const water = measuredWater(r)
        // where salt does not stand for the calcium, chloride is invented to close the charge, and again after a dose
        fc.pre(!isFailure(water) && number(water).totals.sodium > 1e-4)
        const titratedAlkalinity = alkalinity === undefined ? undefined : alkalinity / AS_ALKALINITY
        const wanted = { ph, titratedAlkalinity, borate: undefined }
        const dose = doseForTargets(number(water), chlorine, wanted, { acid, base, borate: undefined })
        if (isFailure(dose)) {
          expect(dose.failure).toBe('unreachable')
          return
        }
        met++
        for (const amount of [dose.acid, dose.bicarbonate, dose.sodaAsh, dose.caustic]) {
          expect(amount).toBeGreaterThanOrEqual(0)
        }
        if (base !== 'sodium_hydroxide') expect(dose.caustic).toBe(0)
        const reached = dose.water
        const aired =
          dose.aerationNeeded && ph !== undefined
            ? number(waterByAir(reached.totals, reached.temperature, ph, reached.ionicStrength))
            : reached
        if (dose.aerationNeeded) expect(reached.ph).toBeLessThan((ph ?? 0) + 1e-6)
        if (ph !== undefined) expect(aired.ph).toBeCloseTo(ph, 6)
        if (alkalinity !== undefined) {
          expect(number(readingWithoutChlorine(aired)) * AS_ALKALINITY).toBeCloseTo(alkalinity, 4)
        }
      }),
      RUNS,
    )
    expect(met).toBeGreaterThan(RUNS.numRuns / 2)
  })

  test('with borate on the way', () =>
    holds((water) => {
      const borate = water.totals.borate + 30 / 10_810
      const dose = doseForTargets(
        water,
        0,
        { ph: 7.5, titratedAlkalinity: undefined, borate },
        { acid: undefined, base: undefined, borate: 'borax_pentahydrate' },
      )
      const reached = number(dose).water
      expect(reached.ph).toBeCloseTo(7.5, 6)
      expect(reached.totals.borate / borate).toBeCloseTo(1, 9)
    }))
})

describe('indexes', () => {
  test('Langelier rises with pH less the change of log10(1 + 2 K2/[H+]), carbonate alkalinity and ionic strength held', () =>
    holds(({ temperature, totals, carbonateAlkalinity, ionicStrength, ph }) => {
      const lsi = (p: number) => p - saturationPh(temperature, totals.calcium, carbonateAlkalinity, ionicStrength, p)
      const split = (p: number) =>
        Math.log10(1 + 2 * 10 ** (p - pKCarbonic2(temperature) + 3 * standardMethodsPfm(temperature, ionicStrength)))
      expect(lsi(ph + 0.3) - lsi(ph)).toBeCloseTo(0.3 - (split(ph + 0.3) - split(ph)), 10)
    }))

  test('Langelier rises with temperature and calcium, and by log10 of carbonate alkalinity', () =>
    holds(({ temperature: T, totals: { calcium }, carbonateAlkalinity: alkalinity, ionicStrength: I, ph }) => {
      const pHs = saturationPh(T, calcium, alkalinity, I, ph)
      expect(saturationPh(T + 1, calcium, alkalinity, I, ph)).toBeLessThan(pHs)
      expect(saturationPh(T, calcium * 2, alkalinity, I, ph)).toBeCloseTo(pHs - Math.log10(2), 10)
      expect(saturationPh(T, calcium, alkalinity * 3, I, ph)).toBeCloseTo(pHs - Math.log10(3), 10)
    }))

  test('the pH for a wanted index has that index, total carbonate kept', () =>
    holds((water) => {
      const there = number(waterForIndex(water, 0.1))
      expect(langelierIndex(there)).toBeCloseTo(0.1, 7)
      expect(there.totals.carbonate).toBe(water.totals.carbonate)
    }))

  test('precipitation has the sign of the calcite index and leaves nothing to precipitate', () =>
    holds((water) => {
      const { precipitated, water: left } = number(calciteEquilibrium(water))
      if (Math.abs(water.calciteIndex) > 1e-6) expect(Math.sign(precipitated)).toBe(Math.sign(water.calciteIndex))
      expect(Math.abs(number(calciteEquilibrium(left)).precipitated)).toBeLessThan(1e-11)
    }))
})

test('without cyanurate, chlorine is shared by Morris’s constant', () =>
  holds((water) => {
    const totals = number(withChlorine({ ...water, totals: { ...water.totals, cyanurate: 0, borate: 0 } }, 1e-7))
    const dilute = number(
      closedWater({ ...totals, chloride: 0, sodium: 0, calcium: 0, magnesium: 0, sulfate: 0 }, water.temperature),
    )
    const of = (name: string) => dilute.species[SPECIES.findIndex((s) => s.name === name)] ?? Number.NaN
    const share = of('HOCl') / (of('HOCl') + of('OCl-'))
    // activity at the few mmol/L that are left moves the constant by less than 0.06
    const morris = (shift: number) => 1 / (1 + 10 ** (dilute.ph - pKHypochlorous(water.temperature) + shift))
    expect(share).toBeLessThanOrEqual(morris(0) + 1e-9)
    expect(share).toBeGreaterThan(morris(0.06))
  }))

describe('no reading makes an answer jump', () => {
  const spans: readonly [keyof Measured, number, number][] = [
    ['ph', 5, 11],
    ['temperature', 273.15, 318.15],
    ['titratedAlkalinity', 20 / AS_ALKALINITY, 2_000 / AS_ALKALINITY],
    ['calcium', 20 / AS_CALCIUM, 5_000 / AS_CALCIUM],
    ['chloride', 0, 0.6],
    ['cyanurate', 0, 100 / 129_075],
    ['borate', 0, 100 / 10_810],
    ['magnesium', 0, 0.02],
    ['sulfate', 0, 0.02],
  ]
  const steps = 2_000

  test.each(spans)('%s', (name, low, high) => {
    const base: Measured = {
      ph: 7.5,
      temperature: 299.15,
      titratedAlkalinity: 100 / AS_ALKALINITY,
      calcium: 300 / AS_CALCIUM,
      magnesium: 0.0005,
      sulfate: 0.0005,
      chloride: 0.05,
      borate: 0.0005,
      cyanurate: 0.0003,
      chlorine: 0,
    }
    let before: number[] | undefined
    for (let i = 0; i <= steps; i++) {
      const water = measuredWater({ ...base, [name]: low + ((high - low) * i) / steps })
      if (isFailure(water)) {
        // cyanurate and borate take all the alkalinity from some pH on: that is an end, not a jump
        expect(water.failure).toBe('no_such_water')
        before = undefined
        continue
      }
      const now = [
        water.calciteIndex,
        langelierIndex(water),
        water.carbonateAlkalinity * 1e3,
        water.ionicStrength * 100,
      ]
      const jump = before ? Math.max(...now.map((value, k) => Math.abs(value - (before?.[k] ?? value)))) : 0
      if (water.carbonateAlkalinity > 2e-4) expect(jump, `${name} step ${i}`).toBeLessThan(0.12)
      before = water.carbonateAlkalinity > 2e-4 ? now : undefined
    }
  })
})
