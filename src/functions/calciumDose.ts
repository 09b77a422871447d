import { isFailure } from '../chemistry/failure'
import { outside } from '../chemistry/outside'
import { productAmount } from '../chemistry/productAmount'
import { STRENGTH_BASES, type StrengthBasis } from '../chemistry/products'
import type { Solve } from './define'
import { VOLUME } from './volume'
import { PER_CALCIUM } from './waterReadings'

const PRODUCTS = ['calcium_chloride', 'calcium_chloride_dihydrate'] as const

/** Calcium chloride for a wanted calcium hardness, and the hardness that it leads to. */
export const CALCIUM_DOSE: Solve = {
  name: 'CALCIUM_DOSE',
  version: 1,
  parameters: [
    { name: 'calcium_hardness', unit: 'mg/L as CaCO3', min: 0, max: 5_000 },
    { name: 'target_calcium_hardness', unit: 'mg/L as CaCO3', min: 0, max: 5_000 },
    VOLUME,
    { name: 'calcium_product', unit: 'choice', choices: PRODUCTS },
    { name: 'calcium_strength', unit: '1', min: 0.01, max: 2_000, optional: true },
    { name: 'calcium_strength_basis', unit: 'choice', choices: STRENGTH_BASES, optional: true },
  ],
  outputs: [
    { name: 'calcium_product_mass', unit: 'kg' },
    { name: 'calcium_hardness_after', unit: 'mg/L as CaCO3' },
  ],
  source: 'Stoichiometry of CaCl2 (110.984 g/mol) and CaCl2·2H2O (147.014 g/mol) on CaCO3; IUPAC 2021 atomic weights.',
  equation: String.raw`m = \max(0, H^* - H) \frac{V}{100.087} \frac{M}{p}`,
  solve: (
    hardness: number,
    target: number,
    volume: number,
    product: (typeof PRODUCTS)[number],
    strength: number | undefined,
    basis: StrengthBasis | undefined,
  ) => {
    const refused =
      outside('calcium_hardness', hardness, 0, 5_000) ??
      outside('target_calcium_hardness', target, 0, 5_000) ??
      outside('volume', volume, VOLUME.min ?? 0, VOLUME.max ?? 0)
    if (refused) return refused
    const moles = (Math.max(0, target - hardness) / PER_CALCIUM) * volume * 1000
    const amount = productAmount(product, moles, strength, basis, 'calcium_strength')
    return [isFailure(amount) ? amount : amount.mass, Math.max(hardness, target)]
  },
  checks: [
    {
      args: [200, 210, 1, 'calcium_chloride', 100, 'mass_percent'],
      output: 'calcium_product_mass',
      expect: 0.011089,
      tolerance: 2e-6,
      where: 'stoichiometry, by hand: 10 g × 110.984 / 100.087',
    },
    {
      args: [200, 210, 37.8541, 'calcium_chloride', 77, 'mass_percent'],
      output: 'calcium_product_mass',
      expect: 1.2 * 0.45359237,
      tolerance: 0.02,
      where: 'handbook dose, 1.2 lb of 77 % in 10 000 US gal for 10 mg/L (from memory)',
    },
  ],
}
