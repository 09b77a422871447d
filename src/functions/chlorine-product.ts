import {
  CHLORINE_NEUTRALIZERS,
  CHLORINE_PRODUCTS,
  type ChlorineNeutralizer,
  type ChlorineProduct,
  chlorineDose,
  neutralizerDose,
} from '../chemistry/chlorineProduct'
import { type Failure, fail, isFailure } from '../chemistry/failure'
import { outside } from '../chemistry/outside'
import { STRENGTH_BASES, type StrengthBasis } from '../chemistry/products'
import { FREE_CHLORINE } from './chlorineReadings'
import type { LockedFunction, Parameter } from './define'
import { VOLUME } from './volume'
import { PER_CALCIUM, PER_CHLORINE, PER_CYANURIC_ACID, PER_SALT } from './waterReadings'

/** The strength on a product's label, and what it counts: without either there is no dose. */
const label = (product: string): readonly Parameter[] => [
  { name: `${product}_strength`, unit: '1', min: 0.01, max: 1_000 },
  { name: `${product}_strength_basis`, unit: 'choice', choices: STRENGTH_BASES },
]
const target: Parameter = { ...FREE_CHLORINE, name: 'target_free_chlorine' }

function outsideReadings(now: number, wanted: number): Failure | undefined {
  return outside('free_chlorine', now, 0, 200) ?? outside('target_free_chlorine', wanted, 0, 200)
}

function chlorineProductDose(
  volume: number,
  now: number,
  wanted: number,
  product: ChlorineProduct,
  strength: number,
  basis: StrengthBasis,
): readonly (number | Failure)[] | Failure {
  const refused = outsideReadings(now, wanted)
  if (refused) return refused
  const dose = chlorineDose(product, volume, Math.max(0, wanted - now) / PER_CHLORINE, { strength, basis })
  if (isFailure(dose)) return dose
  return [
    dose.mass,
    dose.volume ?? fail('out_of_range', 'chlorine_product', { value: product, accepted: 'sodium_hypochlorite' }),
    PER_CYANURIC_ACID * dose.cyanurate,
    PER_CALCIUM * dose.calcium,
    PER_SALT * dose.chloride,
  ]
}

function neutralizerMass(
  volume: number,
  now: number,
  wanted: number,
  product: ChlorineNeutralizer,
  strength: number,
  basis: StrengthBasis,
): number | Failure {
  const refused = outsideReadings(now, wanted)
  if (refused) return refused
  const dose = neutralizerDose(product, volume, Math.max(0, now - wanted) / PER_CHLORINE, { strength, basis })
  return isFailure(dose) ? dose : dose.mass
}

/** Products that bring chlorine or take it away. */
export const CHLORINE_PRODUCT_FUNCTIONS: readonly LockedFunction[] = [
  {
    name: 'CHLORINE_PRODUCT_DOSE',
    version: 1,
    parameters: [
      VOLUME,
      FREE_CHLORINE,
      target,
      { name: 'chlorine_product', unit: 'choice', choices: CHLORINE_PRODUCTS },
      ...label('chlorine'),
    ],
    outputs: [
      { name: 'chlorine_product_mass', unit: 'kg' },
      { name: 'chlorine_product_volume', unit: 'L' },
      { name: 'cyanuric_acid_added', unit: 'mg/L' },
      { name: 'calcium_added', unit: 'mg/L as CaCO3' },
      { name: 'salt_added', unit: 'mg/L as NaCl' },
    ],
    source:
      'Stoichiometry of the product, from its formula and the strength on its label; hypochlorite strengths after Handbook of Chlorination (1972), as quoted by a distributor’s profile.',
    equation: String.raw`m = \frac{(C_{target} - C)\, V}{w},\quad w = \text{available chlorine of the product}`,
    solve: chlorineProductDose,
    checks: [
      {
        args: [1, 0, 1, 'sodium_hypochlorite', 12.5, 'trade_percent'],
        output: 'chlorine_product_volume',
        expect: 0.008,
        tolerance: 5e-6,
        where: 'definition of trade per cent: 125 g/L of available chlorine, 8.00 mL for 1 g',
      },
      {
        args: [1, 0, 1, 'sodium_hypochlorite', 12.5, 'trade_percent'],
        output: 'salt_added',
        expect: 1.648,
        tolerance: 0.001,
        where: 'stoichiometry, by hand: 2 × 58.443 / 70.906',
      },
      {
        args: [1, 0, 1, 'calcium_hypochlorite', 65, 'available_mass_percent'],
        output: 'chlorine_product_mass',
        expect: 0.0015385,
        tolerance: 1e-7,
        where: 'definition of available chlorine: 1 g / 0.65',
      },
      {
        args: [1, 0, 1, 'calcium_hypochlorite', 65, 'available_mass_percent'],
        output: 'calcium_added',
        expect: 0.706,
        tolerance: 0.0005,
        where: 'stoichiometry, by hand: 100.087 / (2 × 70.906)',
      },
      {
        args: [1, 0, 1, 'trichlor', 90, 'available_mass_percent'],
        output: 'cyanuric_acid_added',
        expect: 0.607,
        tolerance: 0.0005,
        where: 'Wahman & Alexander 2019: 0.59 mg of Cy (126.05 g/mol) a mg of Cl2; 0.607 as cyanuric acid',
      },
    ],
  },
  {
    name: 'NEUTRALIZER_MASS',
    version: 1,
    parameters: [
      VOLUME,
      FREE_CHLORINE,
      target,
      { name: 'neutralizer', unit: 'choice', choices: CHLORINE_NEUTRALIZERS },
      ...label('neutralizer'),
    ],
    result: { name: 'neutralizer_mass', unit: 'kg' },
    source:
      'Stoichiometry; thiosulfate to tetrathionate, 7.0 mg of pentahydrate a mg of chlorine (instrument maker’s note TE213, 2017). Half at a time, then test: other products of the reaction need less.',
    equation: String.raw`m = \frac{(C - C_{target})\, V\, r}{w}`,
    evaluate: neutralizerMass,
    checks: [
      {
        args: [1, 1, 0, 'sodium_thiosulfate', 100, 'mass_percent'],
        expect: 0.007,
        tolerance: 5e-6,
        where: 'instrument maker’s note TE213: 7.0 mg of pentahydrate a mg of chlorine',
      },
      {
        args: [1, 1, 0, 'ascorbic_acid', 100, 'mass_percent'],
        expect: 0.00248,
        tolerance: 5e-6,
        where: 'stoichiometry, by hand: 176.12 / 70.906 = 2.48 mg a mg',
      },
    ],
  },
]
