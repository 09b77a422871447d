import { CHLORINE_PRODUCTS, type ChlorineProduct } from '../chemistry/chlorineProduct'
import { hypochloriteLeft } from '../chemistry/hypochloriteLeft'
import { outside } from '../chemistry/outside'
import { PRODUCTS, STRENGTH_BASES, type StrengthBasis } from '../chemistry/products'
import type { LockedFunction, Parameter } from './define'
import { PER_CHLORINE, PER_CYANURIC_ACID } from './waterReadings'

const product: Parameter = { name: 'chlorine_product', unit: 'choice', choices: CHLORINE_PRODUCTS }

/** What a chlorine product's label does not say: what age left of it, and the stabilizer that comes along. */
export const CHLORINE_LABEL_FUNCTIONS: readonly LockedFunction[] = [
  {
    name: 'HYPOCHLORITE_LEFT',
    version: 1,
    parameters: [
      product,
      { name: 'chlorine_strength', unit: '1', min: 0.01, max: 2_000 },
      { name: 'chlorine_strength_basis', unit: 'choice', choices: STRENGTH_BASES },
      { name: 'product_age', unit: 'day', min: 0, max: 36_500, optional: true },
    ],
    result: { name: 'share_left', unit: '1' },
    source:
      'Second order in hypochlorite: Gordon, Adam & Bubnis, J. AWWA, Minimizing chlorate ion formation (abstract). Half-lives at 25 °C by strength: handbook table, from memory.',
    equation: String.raw`s = \frac{1}{1 + t / t_{1/2}(c_0)}`,
    evaluate: (id: ChlorineProduct, strength: number, basis: StrengthBasis, days: number | undefined) =>
      id === 'sodium_hypochlorite' ? hypochloriteLeft(strength, basis, days ?? 0) : 1,
    checks: [
      {
        args: ['sodium_hypochlorite', 10, 'mass_percent', 220],
        expect: 0.5,
        tolerance: 1e-9,
        where: 'handbook table, from memory: 10 % at 25 °C is half after 220 days',
      },
      {
        args: ['sodium_hypochlorite', 12.5, 'trade_percent', 0],
        expect: 1,
        tolerance: 0,
        where: 'fresh: the label holds',
      },
    ],
  },
  {
    name: 'CYANURIC_ACID_WITH_CHLORINE',
    version: 1,
    parameters: [product, { name: 'chlorine_added', unit: 'mg/L as Cl2', min: 0, max: 1_000 }],
    result: { name: 'cyanuric_acid_added', unit: 'mg/L' },
    source: 'Stoichiometry of the product, from its formula; cyanuric acid 129.075, Cl2 70.906 g/mol (IUPAC 2021).',
    equation: String.raw`\Delta CYA = \frac{129.075}{70.906\, n}\, \Delta FC`,
    evaluate: (id: ChlorineProduct, added: number) => {
      const { cyanurate = 0, chlorine = 1 } = PRODUCTS[id].gives
      return (
        outside('chlorine_added', added, 0, 1_000) ?? (added / PER_CHLORINE / chlorine) * cyanurate * PER_CYANURIC_ACID
      )
    },
    checks: [
      {
        args: ['dichlor', 1],
        expect: 0.91,
        tolerance: 0.0005,
        where: 'Wahman & Alexander 2019: 0.89 mg of Cy (126.05 g/mol) a mg of Cl2; 0.910 as cyanuric acid',
      },
      {
        args: ['trichlor', 1],
        expect: 0.607,
        tolerance: 0.0005,
        where: 'Wahman & Alexander 2019: 0.59 mg of Cy (126.05 g/mol) a mg of Cl2; 0.607 as cyanuric acid',
      },
    ],
  },
]
