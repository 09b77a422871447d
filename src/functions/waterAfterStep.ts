import { changedTotals, type WaterChange } from '../chemistry/changedTotals'
import { withChlorine } from '../chemistry/chlorineInWater'
import { type Failure, fail, isFailure } from '../chemistry/failure'
import { outside } from '../chemistry/outside'
import { productContent } from '../chemistry/productContent'
import { PRODUCT_IDS, type ProductId, STRENGTH_BASES, type StrengthBasis } from '../chemistry/products'
import { NO_TOTALS, type Totals } from '../chemistry/totals'
import { waterAfter } from '../chemistry/waterAfter'
import { chlorineOf, countedIn, readingsAfter } from './additions'
import type { LockedFunction, Parameter, Solve } from './define'
import { VOLUME } from './volume'
import {
  PER_BORON,
  PER_CALCIUM,
  PER_CHLORINE,
  PER_CYANURIC_ACID,
  PER_SALT,
  WATER_READINGS,
  type WaterReadings,
  waterFromReadings,
} from './waterReadings'

type Maybe<T> = T | undefined
type Result = number | Failure
type Optional<T extends readonly unknown[]> = { readonly [I in keyof T]: T[I] | undefined }
type Readings = Optional<WaterReadings>
type Step = readonly [
  volume: Maybe<number>,
  product: Maybe<ProductId>,
  strength: Maybe<number>,
  basis: Maybe<StrengthBasis>,
  mass: Maybe<number>,
  litres: Maybe<number>,
  chlorineUsed: Maybe<number>,
]

const step: readonly Parameter[] = [
  { ...VOLUME, optional: true },
  { name: 'step_product', unit: 'choice', choices: PRODUCT_IDS, optional: true },
  { name: 'step_strength', unit: '1', min: 0.01, max: 2_000, optional: true },
  { name: 'step_strength_basis', unit: 'choice', choices: STRENGTH_BASES, optional: true },
  { name: 'step_mass', unit: 'kg', min: 0, max: 1_000_000, optional: true },
  { name: 'step_volume', unit: 'L', min: 0, max: 1_000_000, optional: true },
  { name: 'step_chlorine_used', unit: 'mg/L as Cl2', min: 0, max: 1_000, optional: true },
]

/**
 * The water after one step of a plan: one product by the strength on its label, then chlorine used up. A reading that was not
 * taken makes only those results fail that need it, so that salt can be followed where pH was never read.
 */
const WATER_AFTER_STEP: Solve = {
  name: 'WATER_AFTER_STEP',
  version: 1,
  parameters: [...WATER_READINGS.map((reading) => ({ ...reading, optional: true }) as const), ...step],
  outputs: [
    { name: 'ph', unit: 'pH' },
    { name: 'total_alkalinity', unit: 'mg/L as CaCO3' },
    { name: 'lsi', unit: '1' },
    { name: 'calcium_hardness', unit: 'mg/L as CaCO3' },
    { name: 'cyanuric_acid', unit: 'mg/L' },
    { name: 'borate', unit: 'mg/L as B' },
    { name: 'salt', unit: 'mg/L as NaCl' },
    { name: 'free_chlorine', unit: 'mg/L as Cl2' },
  ],
  source:
    'Mass and charge balance of what the product brings (its formula and the strength on its label), then one equilibrium of the closed water; constants as for WATER.',
  equation: String.raw`\mathrm{Alk}' = \mathrm{Alk} + n a,\quad C_T' = C_T + n c,\quad n = \frac{m\, w}{M\, V}`,
  solve: (...args: readonly [...Readings, ...Step]) => {
    const readings = args.slice(0, WATER_READINGS.length) as unknown as Readings
    const given = args.slice(WATER_READINGS.length) as unknown as Step
    const refused = outsideAny(step, given) ?? outsideAny(WATER_READINGS, readings)
    if (refused) return refused
    const changes = changesOf(given)
    return isFailure(changes) ? changes : [...equilibrium(readings, changes), ...conserved(readings, changes)]
  },
  checks: [
    {
      // 0.2 mol in 1 m³: 23.19 g of 31.45 % acid
      args: [
        ...[7.2, 25, 120, 50, 3058.4, undefined, 50, 0, undefined, undefined, undefined, undefined],
        ...[1, 'hydrochloric_acid', 31.45, 'mass_percent', 0.023187, undefined, undefined],
      ],
      output: 'ph',
      expect: 6.9603,
      tolerance: 0.05,
      where: 'PHREEQC 3.8.9 (USGS), phreeqc.dat, test/published/phreeqc-24.json, water 256 with 0.2 mmol/L of HCl',
    },
    {
      args: [
        ...[7.2, 25, 120, 50, 3058.4, undefined, 50, 0, undefined, undefined, undefined, undefined],
        ...[10, 'salt', 100, 'mass_percent', 10, undefined, undefined],
      ],
      output: 'salt',
      expect: 4058.4,
      tolerance: 0.1,
      where: 'by hand: 1 kg in 1 m³ is 1000 mg/L',
    },
    {
      args: [
        ...[undefined, undefined, undefined, undefined, undefined, undefined, 20, undefined, undefined],
        ...[undefined, 1, undefined],
        ...[1, 'dichlor', 55, 'available_mass_percent', 0.00181818, undefined, undefined],
      ],
      output: 'cyanuric_acid',
      expect: 20.91,
      tolerance: 0.01,
      where: 'by hand: dichlor brings 0.910 mg of cyanuric acid with each mg of chlorine',
    },
  ],
}

/** Readings of the whole water after the changes; each the failure where the water cannot be known. */
function equilibrium(readings: Readings, changes: readonly WaterChange[]): readonly Result[] {
  const lacking = WATER_READINGS.find((reading, i) => !reading.optional && readings[i] === undefined)
  const known = readings as WaterReadings
  const from = lacking ? fail('missing', lacking.name) : waterFromReadings(known)
  const start = isFailure(from) ? from : withChlorine(from, chlorineOf(known))
  const after = isFailure(from) ? from : isFailure(start) ? start : waterAfter(start, from, changes)
  if (isFailure(after)) return [after, after, after]
  const [ph, alkalinity, , , , , , , , lsi] = readingsAfter(after, countedIn(known))
  const none = fail('missing', 'ph')
  return [ph ?? none, alkalinity ?? none, lsi ?? none]
}

/** What needs no equilibrium: each reading and what the changes bring to it. */
function conserved(readings: Readings, changes: readonly WaterChange[]): readonly Result[] {
  const [, , , calcium, salt, , cyanuric, borate, , , chlorine] = readings
  const start: Totals = {
    ...NO_TOTALS,
    chloride: (salt ?? 0) / PER_SALT,
    chlorine: (chlorine ?? 0) / PER_CHLORINE,
  }
  const end = changedTotals(start, changes)
  const rise = (name: string, reading: Maybe<number>, brought: number): Result =>
    reading === undefined ? fail('missing', name) : reading + brought
  return [
    rise('calcium_hardness', calcium, PER_CALCIUM * end.calcium),
    rise('cyanuric_acid', cyanuric, PER_CYANURIC_ACID * end.cyanurate),
    rise('borate', borate, PER_BORON * end.borate),
    rise('salt', salt, PER_SALT * (end.chloride - start.chloride)),
    rise('free_chlorine', chlorine, PER_CHLORINE * (end.chlorine - start.chlorine)),
  ]
}

/** The product as moles of its substance in a litre of pool water, and the chlorine that goes. */
function changesOf([volume, product, strength, basis, mass, litres, used]: Step): readonly WaterChange[] | Failure {
  const gone = { kind: 'chlorine_used', amount: (used ?? 0) / PER_CHLORINE } as const
  if (product === undefined) return [gone]
  if (volume === undefined) return fail('missing', 'volume')
  const content = productContent(product, strength, basis, 'step_strength')
  if (isFailure(content)) return content
  if (mass === undefined && litres === undefined) return fail('missing', 'step_mass')
  if (litres !== undefined && content.density === undefined)
    return fail('out_of_range', 'step_volume', { value: product, accepted: 'step_mass' })
  const kilograms = mass ?? (litres ?? 0) * (content.density ?? 0)
  return [{ kind: 'product', product, amount: (kilograms * content.moles) / (1000 * volume) }, gone]
}

function outsideAny(parameters: readonly Parameter[], given: readonly unknown[]): Failure | undefined {
  for (const [i, { name, unit, min = 0, max = 0 }] of parameters.entries()) {
    const value = given[i]
    if (unit === 'choice' || value === undefined) continue
    const refused = outside(name, Number(value), min, max)
    if (refused) return refused
  }
  return undefined
}

/** What a step plan looks ahead with. */
export const PLAN_FUNCTIONS: readonly LockedFunction[] = [WATER_AFTER_STEP]
