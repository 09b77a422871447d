import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { concentrationAfterMass, massForRise } from '../../src/chemistry/massForRise'
import {
  conductivityAt25,
  conductivityOfSalt,
  MOST_CONDUCTIVITY,
  MOST_NACL,
  saltFromConductivity,
} from '../../src/chemistry/saltConductivity'
import { saltFromChloride } from '../../src/chemistry/saltFromChloride'
import { waterLossFromSalt } from '../../src/chemistry/waterLoss'
import { readTable } from '../published/readTable'

const seed = 20_260_714

describe('salt by mass', () => {
  test('the mass for a wanted concentration gives it', () => {
    const reading = fc.double({ min: 0, max: 8_000, noNaN: true })
    fc.assert(
      fc.property(reading, reading, fc.double({ min: 0.5, max: 1, noNaN: true }), (now, wanted, purity) => {
        const mass = Number(massForRise('salt', 56.8, now, wanted, purity, 100_000))
        const after = Number(concentrationAfterMass('salt', 56.8, now, mass, purity, 100_000))
        expect(after).toBeCloseTo(Math.max(now, wanted), 7)
      }),
      { seed },
    )
  })

  // chloride is 0.60663 of NaCl: 35.453 / 58.443
  test('3200 mg/L hold 1941 mg/L of chloride', () => {
    expect(Math.abs(Number(saltFromChloride(1_941)) - 3_200)).toBeLessThan(1)
  })
})

describe('salt by conductivity', () => {
  test.each(readTable('nacl-conductivity.csv'))('$molar mol/L conducts $siemens_per_metre S/m within 0.2 %', (row) => {
    const salt = 58_443 * Number(row.molar)
    const got = Number(conductivityOfSalt(salt)) / 10_000
    expect(Math.abs(got / Number(row.siemens_per_metre) - 1)).toBeLessThan(0.002)
    expect(Math.abs(Number(saltFromConductivity(10_000 * Number(row.siemens_per_metre))) / salt - 1)).toBeLessThan(
      0.002,
    )
  })

  // CRC Handbook, conductivity of solutions at 20 °C, mS/cm (from memory), densities 1.0018 and 1.0053: half the last digit is
  // 0.6 % of 8.2, and the table there is smoothed by hand
  test.each([
    [0.5, 5_009, 8.2, 0.02],
    [1, 10_053, 16.0, 0.005],
  ])('at %d % and 20 °C %d mg/L conduct %d mS/cm', (_, salt, millisiemens, share) => {
    const got = Number(conductivityAt25(1_000 * millisiemens, 20))
    expect(Math.abs(got / Number(conductivityOfSalt(salt)) - 1)).toBeLessThan(share)
  })

  test('goes there and back over the whole table, rising all the way', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: MOST_NACL, noNaN: true }), (salt) => {
        const kappa = Number(conductivityOfSalt(salt))
        expect(Math.abs(Number(saltFromConductivity(kappa)) - salt)).toBeLessThan(1e-9 * MOST_NACL)
        if (salt > 1) expect(Number(conductivityOfSalt(salt * 0.999))).toBeLessThan(kappa)
      }),
      { seed, numRuns: 2_000 },
    )
    expect(saltFromConductivity(0)).toBe(0)
    expect(Number(saltFromConductivity(MOST_CONDUCTIVITY))).toBeCloseTo(MOST_NACL, 6)
    expect(saltFromConductivity(MOST_CONDUCTIVITY + 1)).toMatchObject({
      failure: 'out_of_range',
      quantity: 'conductivity',
    })
  })

  // CRC / NIST, KCl 0.01 mol/kg: 1273.03 µS/cm at 20 °C, 1408.23 at 25, 1546.63 at 30; NaCl's curve is a few tenths of a per cent steeper
  test.each([
    [20, 1_273.03],
    [30, 1_546.63],
  ])('at %d °C the compensation is within 0.6 %% of the KCl standard', (celsius, measured) => {
    expect(Math.abs(Number(conductivityAt25(measured, celsius)) / 1_408.23 - 1)).toBeLessThan(0.006)
  })

  test('at 25 °C nothing is compensated', () => expect(conductivityAt25(6_052, 25)).toBe(6_052))
})

describe('water lost with salt', () => {
  // by hand: 56 800 L × ln(3200 / 2900) / 14 = 399.4
  test('3200 to 2900 in 14 days at 56.8 m³ is 400 L a day', () => {
    expect(Math.abs(Number(waterLossFromSalt(56.8, 3_200, 2_900, 14)) - 400)).toBeLessThan(1)
  })

  test('adds up over two spans', () => {
    const loss = (before: number, now: number, days: number) => Number(waterLossFromSalt(50, before, now, days))
    expect(loss(3_400, 3_000, 20)).toBeCloseTo((loss(3_400, 3_200, 10) + loss(3_200, 3_000, 10)) / 2, 9)
  })

  test('a reading that rose shows none', () => {
    expect(waterLossFromSalt(50, 3_000, 3_001, 7)).toMatchObject({ failure: 'out_of_range', quantity: 'salt' })
    expect(waterLossFromSalt(50, 3_000, 3_000, 7)).toBe(0)
  })
})
