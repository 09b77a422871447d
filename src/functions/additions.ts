import type { WaterChange } from '../chemistry/changedTotals'
import { readingWithoutChlorine, withChlorine } from '../chemistry/chlorineInWater'
import { dissolvedSolids } from '../chemistry/dissolvedSolids'
import { type Failure, fail, isFailure } from '../chemistry/failure'
import { langelierIndex } from '../chemistry/langelierIndex'
import { outside } from '../chemistry/outside'
import { PRODUCT_IDS } from '../chemistry/products'
import { titratedAlkalinity } from '../chemistry/titratedAlkalinity'
import type { Water } from '../chemistry/water'
import { waterAfter } from '../chemistry/waterAfter'
import type { Output, Parameter, Solve } from './define'
import {
  PER_BORON,
  PER_CALCIUM,
  PER_CHLORINE,
  PER_CYANURIC_ACID,
  PER_EQUIVALENT,
  PER_SALT,
  WATER_READINGS,
  type WaterReadings,
  waterFromReadings,
} from './waterReadings'

type Maybe = number | undefined
type Result = number | Failure

/** What is read from a water after something was done to it. */
const AFTER: readonly Output[] = [
  { name: 'ph_after', unit: 'pH' },
  { name: 'total_alkalinity_after', unit: 'mg/L as CaCO3' },
  { name: 'carbonate_alkalinity_after', unit: 'mg/L as CaCO3' },
  { name: 'calcium_hardness_after', unit: 'mg/L as CaCO3' },
  { name: 'cyanuric_acid_after', unit: 'mg/L' },
  { name: 'borate_after', unit: 'mg/L as B' },
  { name: 'salt_after', unit: 'mg/L as NaCl' },
  { name: 'free_chlorine_after', unit: 'mg/L as Cl2' },
  { name: 'tds_after', unit: 'mg/L' },
  { name: 'lsi_after', unit: '1' },
  { name: 'calcite_si_after', unit: '1' },
]

/** The readings that the changed water would give; alkalinity as the same bottle would read it. */
export function readingsAfter(water: Water, counted: boolean): readonly Result[] {
  const { totals } = water
  const alkalinity = counted ? titratedAlkalinity(water) : readingWithoutChlorine(water)
  const noCalcium =
    totals.calcium > 0 ? undefined : fail('out_of_range', 'calcium_hardness', { value: 0, min: 0.01, max: 5_000 })
  const noCarbonate = totals.carbonate > 0 ? undefined : fail('no_such_water', 'total_alkalinity', { left: 0 })
  return [
    water.ph,
    isFailure(alkalinity) ? alkalinity : alkalinity * PER_EQUIVALENT,
    water.carbonateAlkalinity * PER_EQUIVALENT,
    totals.calcium * PER_CALCIUM,
    totals.cyanurate * PER_CYANURIC_ACID,
    totals.borate * PER_BORON,
    totals.chloride * PER_SALT,
    totals.chlorine * PER_CHLORINE,
    dissolvedSolids(water) * 1000,
    noCalcium ?? noCarbonate ?? langelierIndex(water),
    noCalcium ?? noCarbonate ?? water.calciteIndex,
  ]
}

/** The chlorine that takes part in what follows, mol/L, whether or not it counted in the bottle. */
export function chlorineOf(readings: WaterReadings): number {
  return (readings[10] ?? 0) / PER_CHLORINE
}

export function countedIn(readings: WaterReadings): boolean {
  return readings[11] === 'chlorine_counted'
}

/** mmol/L of pure substance, one parameter a product */
const added: readonly Parameter[] = PRODUCT_IDS.map((id) => ({
  name: `add_${id}`,
  unit: 'mmol/L',
  min: 0,
  max: 100,
  optional: true,
}))
const rest: readonly Parameter[] = [
  { name: 'add_carbon_dioxide', unit: 'mmol/L', min: -100, max: 100, optional: true },
  { name: 'chlorine_made', unit: 'mg/L as Cl2', min: 0, max: 100, optional: true },
  { name: 'chlorine_used', unit: 'mg/L as Cl2', min: 0, max: 100, optional: true },
  { name: 'evaporated_share', unit: '1', min: 0, max: 0.9, optional: true },
]

const SOURCE =
  'Mass and charge balance of what each product brings (its formula), then one equilibrium of the closed water; constants as for WATER.'
const REFERENCE = 'PHREEQC 3.8.9 (USGS), phreeqc.dat, test/published/phreeqc-24.json'

/** The water after a list of additions, in the order: products together, CO2, chlorine made, used, evaporation. */
export const WATER_AFTER: Solve = {
  name: 'WATER_AFTER',
  version: 1,
  parameters: [...WATER_READINGS, ...added, ...rest],
  outputs: AFTER,
  source: SOURCE,
  equation: String.raw`\mathrm{Alk}' = \mathrm{Alk} + \sum_i n_i a_i,\quad C_T' = C_T + \sum_i n_i c_i,\quad \mathrm{pH}':\ \mathrm{Alk}(\mathrm{pH}', C_T') = \mathrm{Alk}'`,
  solve: (...args: readonly [...WaterReadings, ...Maybe[]]) => {
    const readings = args.slice(0, WATER_READINGS.length) as unknown as WaterReadings
    const given = args.slice(WATER_READINGS.length) as readonly Maybe[]
    const refused = outsideAny([...added, ...rest], given)
    if (refused) return refused
    const from = waterFromReadings(readings)
    if (isFailure(from)) return from
    const [carbonDioxide = 0, made = 0, used = 0, evaporated = 0] = given.slice(added.length)
    const changes: readonly WaterChange[] = [
      ...PRODUCT_IDS.map((product, i) => ({ kind: 'product', product, amount: (given[i] ?? 0) / 1000 }) as const),
      { kind: 'carbon_dioxide', amount: carbonDioxide / 1000 },
      { kind: 'chlorine_made', amount: made / PER_CHLORINE },
      { kind: 'chlorine_used', amount: used / PER_CHLORINE },
      { kind: 'evaporation', share: evaporated },
    ]
    const start = withChlorine(from, chlorineOf(readings))
    if (isFailure(start)) return start
    const water = waterAfter(start, from, changes)
    return isFailure(water) ? water : readingsAfter(water, countedIn(readings))
  },
  checks: [
    {
      args: [7.2, 25, 120, 50, 3058.4, undefined, 50, 0, undefined, undefined, undefined, undefined, 0.2],
      output: 'ph_after',
      expect: 6.9603,
      tolerance: 0.05,
      where: `${REFERENCE}, water 256 with 0.2 mmol/L of HCl`,
    },
    {
      args: [
        7.2,
        25,
        120,
        50,
        3058.4,
        undefined,
        50,
        0,
        undefined,
        undefined,
        undefined,
        undefined,
        ...at('sodium_carbonate', 0.25),
      ],
      output: 'ph_after',
      expect: 7.7522,
      tolerance: 0.05,
      where: `${REFERENCE}, water 256 with 0.25 mmol/L of Na2CO3`,
    },
    {
      args: [
        6.8,
        25,
        200,
        800,
        3934.2,
        undefined,
        0,
        0,
        undefined,
        undefined,
        undefined,
        undefined,
        ...at('sodium_bicarbonate', 1),
      ],
      output: 'total_alkalinity_after',
      expect: 249.13,
      tolerance: 0.2,
      where: `${REFERENCE}, water 10 with 1 mmol/L of NaHCO3`,
    },
  ],
}

/** Arguments of WATER_AFTER that add one product only. */
function at(product: (typeof PRODUCT_IDS)[number], amount: number): readonly Maybe[] {
  return PRODUCT_IDS.map((id) => (id === product ? amount : undefined))
}

const fill: readonly Parameter[] = [
  { name: 'fill_ph', unit: 'pH', min: 5, max: 11 },
  { name: 'fill_temperature', unit: '°C', min: 0, max: 45 },
  { name: 'fill_total_alkalinity', unit: 'mg/L as CaCO3', min: 0, max: 2_000 },
  { name: 'fill_calcium_hardness', unit: 'mg/L as CaCO3', min: 0, max: 5_000 },
  { name: 'fill_salt', unit: 'mg/L as NaCl', min: 0, max: 40_000 },
  { name: 'fill_cyanuric_acid', unit: 'mg/L', min: 0, max: 1_000 },
]
const share: Parameter = { name: 'drain_fraction', unit: '1', min: 0, max: 1 }

/** The water after a share of it was replaced by fill water; both mix by what they conserve. */
export const WATER_AFTER_DILUTION: Solve = {
  name: 'WATER_AFTER_DILUTION',
  version: 1,
  parameters: [...WATER_READINGS, share, ...fill],
  outputs: AFTER.map(({ name, unit }) => ({ name: `${name}_dilution`, unit })),
  source: SOURCE,
  equation: String.raw`X' = (1 - x) X + x X_{fill}\quad\text{for each conserved } X`,
  solve: (...args: readonly [...WaterReadings, number, number, number, number, number, number, number]) => {
    const readings = args.slice(0, WATER_READINGS.length) as unknown as WaterReadings
    const given = args.slice(WATER_READINGS.length) as readonly number[]
    const refused = outsideAny([share, ...fill], given)
    if (refused) return refused
    const [x = 0, fillPh = 0, fillTemperature = 0, alkalinity = 0, calcium = 0, salt = 0, cyanuric = 0] = given
    const from = waterFromReadings(readings)
    if (isFailure(from)) return from
    const filled = waterFromReadings([
      fillPh,
      fillTemperature,
      alkalinity,
      calcium,
      salt,
      undefined,
      cyanuric,
      0,
      undefined,
      undefined,
      undefined,
      undefined,
    ])
    if (isFailure(filled)) return { ...filled, quantity: `fill_${filled.quantity}` }
    const change: WaterChange = { kind: 'dilution', share: x, fill: filled.totals }
    const start = withChlorine(from, chlorineOf(readings))
    if (isFailure(start)) return start
    const water = waterAfter(start, from, [change])
    return isFailure(water) ? water : readingsAfter(water, countedIn(readings))
  },
  checks: [
    {
      args: [
        7.8,
        25,
        120,
        400,
        3000,
        undefined,
        100,
        0,
        undefined,
        undefined,
        undefined,
        undefined,
        0.3,
        7.5,
        15,
        80,
        100,
        0,
        0,
      ],
      output: 'cyanuric_acid_after_dilution',
      expect: 70,
      tolerance: 1e-9,
      where: 'mass balance, by hand: 30 % drained, 100 to 70',
    },
    {
      args: [
        7.8,
        25,
        120,
        400,
        3000,
        undefined,
        100,
        0,
        undefined,
        undefined,
        undefined,
        undefined,
        0.3,
        7.5,
        15,
        80,
        100,
        0,
        0,
      ],
      output: 'calcium_hardness_after_dilution',
      expect: 310,
      tolerance: 1e-9,
      where: 'mass balance, by hand: 0.7 × 400 + 0.3 × 100',
    },
  ],
}

function outsideAny(parameters: readonly Parameter[], given: readonly Maybe[]): Failure | undefined {
  for (const [i, { name, min = 0, max = 0 }] of parameters.entries()) {
    const value = given[i]
    const refused = value === undefined ? undefined : outside(name, value, min, max)
    if (refused) return refused
  }
  return undefined
}
