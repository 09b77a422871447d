import { describe, expect, test } from 'vitest'
import { batherDemand, breakpointDose } from '../../src/chemistry/breakpoint'
import { chlorineEquilibrium } from '../../src/chemistry/chlorineEquilibrium'
import { contactTime, type Organism } from '../../src/chemistry/contactTime'
import { isFailure } from '../../src/chemistry/failure'
import { chlorineLeftInSun, PHOTOLYSIS_BOUND, PHOTOLYSIS_HOCL, PHOTOLYSIS_OCL } from '../../src/chemistry/sunLoss'
import { readTable } from '../published/readTable'

const ROOM = 298.15

describe('chlorine in the sun', () => {
  const left = (ph: number, fc: number, cya: number, hours: number) =>
    Number(chlorineLeftInSun('wahman_2019', ROOM, ph, fc / 70_906, cya / 129_075, hours)) * 70_906

  // Nowell & Hoigné 1992, abstract: half-life 12 min at pH 8, 60 min at pH 5
  test.each([
    [8, 12 / 60, 0.03],
    [5, 1, 0.05],
  ])('at pH %d half is gone in %d h without stabilizer', (ph, hours, within) => {
    expect(Math.abs(left(ph, 3, 0, hours) / 3 - 0.5)).toBeLessThan(within)
  })

  test('without stabilizer is the exponential that its rates make', () => {
    const water = chlorineEquilibrium('wahman_2019', ROOM, 7.5, 3 / 70_906, 0)
    if (isFailure(water)) throw new Error('refused')
    const rate = (PHOTOLYSIS_HOCL * water.hocl + PHOTOLYSIS_OCL * water.ocl) / (3 / 70_906)
    expect(left(7.5, 3, 0, 2) / (3 * Math.exp(-rate * 7_200))).toBeCloseTo(1, 9)
  })

  // common practice, from memory: with 25 to 50 mg/L of stabilizer a half-life of 6 to 8 hours, little gain above 50 to 80
  test('with stabilizer half is gone after some hours, and more of it gains little', () => {
    for (const cya of [25, 50]) {
      expect(left(7.5, 3, cya, 5.9)).toBeGreaterThan(1.5)
      expect(left(7.5, 3, cya, 8.6)).toBeLessThan(1.5)
    }
    const kept = [0, 50, 100].map((cya) => left(7.5, 3, cya, 8))
    expect((kept[2] ?? 0) - (kept[1] ?? 0)).toBeLessThan(0.25 * ((kept[1] ?? 0) - (kept[0] ?? 0)))
  })

  test('agrees with a hundred thousand small steps', () => {
    let chlorine = 3 / 70_906
    const steps = 100_000
    const dt = (6 * 3_600) / steps
    for (let i = 0; i < steps; i++) {
      const water = chlorineEquilibrium('wahman_2019', ROOM, 7.5, chlorine, 30 / 129_075)
      if (isFailure(water)) throw new Error('refused')
      chlorine -=
        dt *
        (PHOTOLYSIS_HOCL * water.hocl +
          PHOTOLYSIS_OCL * water.ocl +
          PHOTOLYSIS_BOUND * (water.bound[0] + water.bound[1]))
    }
    expect(left(7.5, 3, 30, 6) / (chlorine * 70_906)).toBeCloseTo(1, 5)
  })

  test('none lasts, and no time loses none', () => {
    expect(left(7.5, 0, 30, 6)).toBe(0)
    expect(left(7.5, 3, 30, 0)).toBeCloseTo(3, 12)
    expect(chlorineLeftInSun('wahman_2019', 311, 7.5, 1e-5, 0, 1)).toMatchObject({ quantity: 'temperature' })
  })
})

describe('breakpoint', () => {
  // stoichiometry: 3 Cl2 for 2 NH3 by mass 3 × 70.906 / (2 × 14.007) = 7.593, printed 7.6; NH2Cl takes half its chlorine again
  test('takes half of combined chlorine and 7.6 times ammonia', () => {
    expect(breakpointDose(1, 0)).toBe(0.5)
    expect(Math.abs(Number(breakpointDose(0, 1)) - (3 * 70.906) / (2 * 14.007))).toBeLessThan(0.01)
    expect(breakpointDose(0.6, 0.2)).toBeCloseTo(0.3 + 1.52, 12)
  })

  // Berg, Fang & Tang 2019: 4.12 g a bather
  test('ten bathers take 41.2 g', () => expect(Number(batherDemand(10, 50, 4.12)) * 50).toBeCloseTo(41.2, 9))
})

describe('contact time', () => {
  test.each(readTable('contact-times.csv'))(
    '$organism at $free_chlorine mg/L with stabilizer $cyanuric_acid: $minutes min',
    (row) => {
      const hours = contactTime(row.organism as Organism, Number(row.free_chlorine), Number(row.cyanuric_acid), 7.5, 25)
      expect(Number(hours) * 60).toBeCloseTo(Number(row.minutes), 9)
    },
  )

  test('between rows is that of the row below, never shorter', () => {
    expect(contactTime('cryptosporidium', 19.9, 0, 7.4, 28)).toBe(25.5)
    expect(contactTime('cryptosporidium', 35, 10, 7.4, 28)).toBe(18)
    expect(contactTime('giardia', 9, 0, 7.4, 28)).toBe(19 / 60)
  })

  test.each<
    [organism: Organism, fc: number, cya: number, ph: number, celsius: number, failure: string, quantity: string]
  >([
    ['cryptosporidium', 20, 16, 7.4, 28, 'out_of_range', 'cyanuric_acid'],
    ['cryptosporidium', 19, 5, 7.4, 28, 'unreachable', 'free_chlorine'],
    ['giardia', 0.9, 0, 7.4, 28, 'unreachable', 'free_chlorine'],
    ['giardia', 2, 0, 7.6, 28, 'out_of_range', 'ph'],
    ['giardia', 2, 0, 7.4, 24, 'out_of_range', 'temperature'],
  ])(
    '%s at %d mg/L, stabilizer %d, pH %d, %d °C has no published time',
    (organism, fc, cya, ph, celsius, failure, quantity) => {
      expect(contactTime(organism, fc, cya, ph, celsius)).toMatchObject({ failure, quantity })
    },
  )
})
