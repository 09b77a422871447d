import { describe, expect, test } from 'vitest'
import {
  type ChlorineNeutralizer,
  type ChlorineProduct,
  chlorineDose,
  neutralizerDose,
} from '../../src/chemistry/chlorineProduct'
import { isFailure } from '../../src/chemistry/failure'
import { PRODUCTS, type StrengthBasis } from '../../src/chemistry/products'

/** 1 mg/L as Cl2 */
const ONE = 1 / 70_906

// by hand from the definitions: trade per cent is g/L of available chlorine / 10; weight per cent NaOCl by density 1.08 is
// 61.7 g/L. Trade tables print 2 oz of 65 % calcium hypochlorite for 10 000 US gal, 1.54 g a m³.
test.each<[ChlorineProduct, number, StrengthBasis, 'mass' | 'volume', number]>([
  ['sodium_hypochlorite', 12.5, 'trade_percent', 'volume', 8],
  ['sodium_hypochlorite', 10, 'trade_percent', 'volume', 10],
  ['sodium_hypochlorite', 100, 'g_per_L', 'volume', 10],
  ['sodium_hypochlorite', 6, 'mass_percent', 'volume', 16.2],
  ['calcium_hypochlorite', 65, 'available_mass_percent', 'mass', 1.5385],
  ['calcium_hypochlorite', 73, 'available_mass_percent', 'mass', 1.3699],
  ['trichlor', 90, 'available_mass_percent', 'mass', 1.1111],
  ['dichlor', 55, 'available_mass_percent', 'mass', 1.8182],
])('%s at %d %s: %s of %d g or mL a m³ for 1 mg/L', (product, strength, basis, what, want) => {
  const dose = chlorineDose(product, 1, ONE, { strength, basis })
  if (isFailure(dose)) throw new Error(JSON.stringify(dose))
  expect(Math.abs(1_000 * (dose[what] ?? 0) - want)).toBeLessThanOrEqual(0.0005 * want)
})

// by stoichiometry, by hand; mg/L a mg/L of chlorine once it is used up. Cyanuric acid: Wahman & Alexander 2019 give 0.89 and
// 0.59 mg of Cy (126.05 g/mol), 0.910 and 0.607 as cyanuric acid
test.each<[ChlorineProduct, number, number, number]>([
  ['sodium_hypochlorite', 0, 0, 1.648],
  ['calcium_hypochlorite', 0, 0.706, 0.824],
  ['dichlor', 0.91, 0, 0.824],
  ['trichlor', 0.607, 0, 0.824],
])('%s leaves cyanuric acid %d, calcium %d, salt %d', (product, cyanuric, calcium, salt) => {
  const dose = chlorineDose(product, 50, ONE, { strength: 10, basis: 'mass_percent' })
  if (isFailure(dose)) throw new Error(JSON.stringify(dose))
  expect(dose.cyanurate * 129_075).toBeCloseTo(cyanuric, 3)
  expect(dose.calcium * 100_087).toBeCloseTo(calcium, 3)
  expect(dose.chloride * 58_443).toBeCloseTo(salt, 3)
})

// thiosulfate: instrument maker's note TE213; peroxide and ascorbic acid by stoichiometry, by hand
test.each<[ChlorineNeutralizer, number]>([
  ['sodium_thiosulfate', 7.0],
  ['hydrogen_peroxide', 0.4797],
  ['ascorbic_acid', 2.484],
])('%s: %d mg of the pure substance a mg of chlorine', (product, want) => {
  const percent = product === 'hydrogen_peroxide' ? 30 : 100
  const dose = neutralizerDose(product, 1, ONE, { strength: percent, basis: 'mass_percent' })
  if (isFailure(dose)) throw new Error(JSON.stringify(dose))
  expect(Math.abs((1_000 * dose.mass * percent) / 100 - want)).toBeLessThanOrEqual(0.0006 * want)
})

describe('a dose', () => {
  test('without a strength or its basis is none', () => {
    const dose = (strength?: number, basis?: StrengthBasis) => chlorineDose('dichlor', 50, ONE, { strength, basis })
    expect(dose()).toMatchObject({ failure: 'missing', quantity: 'chlorine_strength' })
    expect(dose(55)).toMatchObject({ failure: 'missing', quantity: 'chlorine_strength_basis' })
    expect(dose(55, 'trade_percent')).toMatchObject({ failure: 'out_of_range' })
    expect(dose(90, 'available_mass_percent')).toMatchObject({ failure: 'out_of_range' })
  })

  test('goes with volume and rise, and is nothing for no rise', () => {
    const mass = (volume: number, rise: number) => {
      const dose = chlorineDose('trichlor', volume, rise, { strength: 90, basis: 'available_mass_percent' })
      if (isFailure(dose)) throw new Error(JSON.stringify(dose))
      return dose.mass
    }
    expect(mass(50, 3 * ONE)).toBeCloseTo(150 * mass(1, ONE), 9)
    expect(mass(50, 0)).toBe(0)
  })

  test('every product of chlorine gives some, every neutralizer takes some', () => {
    for (const { gives, takes } of Object.values(PRODUCTS)) {
      if (gives.chlorine !== undefined) expect(gives.chlorine).toBeGreaterThan(0)
      if (takes) expect(takes.chlorine).toBeGreaterThan(0)
    }
  })
})
