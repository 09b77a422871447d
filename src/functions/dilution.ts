import {
  afterDilution,
  continuousExchange,
  drainDepth,
  drainFraction,
  drainRounds,
  roundFraction,
} from '../chemistry/dilution'
import { type DilutedQuantity, dilutionPlan } from '../chemistry/dilutionPlan'
import { type Failure, fail, isFailure } from '../chemistry/failure'
import { outside } from '../chemistry/outside'
import type { LockedFunction, Parameter, Value } from './define'
import { VOLUME } from './volume'

/** What dilution brings down, with the unit that each is read in. */
const DILUTED: readonly (readonly [quantity: string, unit: string])[] = [
  ['salt', 'mg/L as NaCl'],
  ['cyanuric_acid', 'mg/L'],
  ['calcium_hardness', 'mg/L as CaCO3'],
  ['total_alkalinity', 'mg/L as CaCO3'],
  ['tds', 'mg/L'],
]

const reading = (name: string, unit = 'mg/L'): Parameter => ({ name, unit, min: 0, max: 1_000_000 })
const counted = (name: string): Parameter => ({ ...reading(name), ofAnyBasis: true })
const fraction: Parameter = { name: 'drain_fraction', unit: '1', min: 0, max: 1 }

function dilution(...readings: readonly (number | undefined)[]): readonly Value[] | Failure {
  const quantities: DilutedQuantity[] = DILUTED.map(([quantity], i) => ({
    quantity,
    now: readings[3 * i],
    fill: readings[3 * i + 1],
    most: readings[3 * i + 2],
  }))
  const plan = dilutionPlan(quantities)
  return isFailure(plan) ? plan : [plan.fraction, plan.governs]
}

/** Draining and refilling: how much, in how many rounds, and what is left. */
export const DILUTION_FUNCTIONS: readonly LockedFunction[] = [
  {
    name: 'DILUTION',
    version: 2,
    parameters: DILUTED.flatMap(([quantity, unit]): Parameter[] =>
      [quantity, `fill_${quantity}`, `most_${quantity}`].map((name) => ({ ...reading(name, unit), optional: true })),
    ),
    outputs: [
      { name: 'drain_fraction', unit: '1' },
      { name: 'governs', unit: 'choice' },
    ],
    source: 'Mass balance of one drain and refill, the largest of what the limits ask for.',
    equation: String.raw`x = \max_i \frac{c_i - c_{i,most}}{c_i - c_{i,fill}}`,
    solve: dilution,
    checks: [
      {
        args: [5200, 0, 3200],
        output: 'drain_fraction',
        expect: 0.385,
        tolerance: 0.0005,
        where: 'by hand: 5200 to 3200 with salt-free fill is 2000 / 5200 = 38.5 %',
      },
      {
        args: [5200, 0, 3400, 180, 0, 50],
        output: 'governs',
        expect: 'cyanuric_acid',
        tolerance: 0,
        where: 'by hand: 130 / 180 is more than 1800 / 5200',
      },
    ],
  },
  {
    name: 'DILUTION_FRACTION',
    version: 1,
    parameters: [counted('now'), counted('most'), counted('fill')],
    result: { name: 'drain_fraction', unit: '1' },
    source: 'Mass balance of one drain and refill.',
    equation: String.raw`x = \frac{c - c_{most}}{c - c_{fill}}`,
    evaluate: (now: number, most: number, fill: number) => drainFraction('now', now, most, fill),
    checks: [
      { args: [100, 70, 0], expect: 0.3, tolerance: 1e-12, where: 'by hand: a 30 % drain takes 100 to 70' },
      { args: [180, 50, 0], expect: 0.7222, tolerance: 5e-5, where: 'by hand: 130 / 180' },
    ],
  },
  {
    name: 'DILUTION_ROUNDS',
    version: 1,
    parameters: [fraction, { name: 'largest_single_drain', unit: '1', min: 0.01, max: 0.9 }],
    result: { name: 'drain_rounds', unit: '1' },
    source: 'Mass balance: n rounds of y replace 1 - (1 - y)ⁿ.',
    equation: String.raw`n = \left\lceil \frac{\ln(1 - x)}{\ln(1 - y)} \right\rceil`,
    evaluate: drainRounds,
    checks: [
      { args: [1 - 0.9 ** 5, 0.1], expect: 5, tolerance: 0, where: 'by hand: five times 10 % leave 59.05 %' },
      {
        args: [0.72, 1 / 3],
        expect: 4,
        tolerance: 0,
        where: 'by hand: three thirds leave 29.6 % (stabilizer 180 to 53), so a fourth for 28 %',
      },
    ],
  },
  {
    name: 'ROUND_FRACTION',
    version: 1,
    parameters: [fraction, { name: 'drain_rounds', unit: '1', min: 0, max: 10_000 }],
    result: { name: 'round_fraction', unit: '1' },
    source: 'Mass balance of n equal drains and refills.',
    equation: 'y = 1 - (1 - x)^{1/n}',
    evaluate: (x: number, rounds: number) =>
      outside('drain_fraction', x, 0, 1) ?? outside('drain_rounds', rounds, 0, 10_000) ?? ofEach(x, rounds),
    checks: [
      { args: [1 - 0.9 ** 5, 5], expect: 0.1, tolerance: 1e-12, where: 'by hand: five times 10 % leave 59.05 %' },
    ],
  },
  {
    name: 'CONCENTRATION_AFTER_DILUTION',
    version: 2,
    parameters: [counted('now'), counted('fill'), fraction],
    result: { name: 'after_dilution', unit: 'mg/L', ofAnyBasis: true },
    source: 'Mass balance. Holds for titrated alkalinity too, both waters being of about equal ionic strength.',
    equation: String.raw`c_1 = c\,(1 - x) + c_{fill}\, x`,
    evaluate: (now: number, fill: number, x: number) => afterDilution('now', now, fill, x),
    checks: [{ args: [100, 0, 0.3], expect: 70, tolerance: 1e-12, where: 'by hand: a 30 % drain takes 100 to 70' }],
  },
  {
    name: 'CONTINUOUS_EXCHANGE',
    version: 1,
    parameters: [fraction, VOLUME],
    result: { name: 'continuous_exchange_volume', unit: 'm³' },
    source: 'Washout of a well mixed tank: c = c_fill + (c0 - c_fill) e^(-V/Vp).',
    equation: String.raw`V = -V_p \ln(1 - x)`,
    evaluate: continuousExchange,
    checks: [
      { args: [0.5, 1], expect: Math.LN2, tolerance: 1e-12, where: 'by hand: halving takes ln 2 volumes' },
      { args: [1 - 0.3679, 1], expect: 1, tolerance: 1e-4, where: 'by hand: one volume leaves 36.79 %' },
    ],
  },
  {
    name: 'DRAIN_DEPTH',
    version: 1,
    parameters: [
      { name: 'round_fraction', unit: '1', min: 0, max: 1 },
      { name: 'water_depth_mean', unit: 'm', min: 0.02, max: 30 },
      { name: 'depth_shallow', unit: 'm', min: 0.02, max: 30 },
    ],
    result: { name: 'drain_depth', unit: 'm' },
    source: 'Geometry of upright walls, down to the shallow floor.',
    equation: String.raw`h = y\, \bar d`,
    evaluate: drainDepth,
    checks: [{ args: [1 / 3, 1.5, 1], expect: 0.5, tolerance: 1e-12, where: 'by hand: a third of 1.5 m' }],
  },
]

function ofEach(x: number, rounds: number): number | Failure {
  if (x > 0 && rounds === 0) return fail('unreachable', 'drain_rounds', { wanted: x })
  return roundFraction(x, rounds)
}
