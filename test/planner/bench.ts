import { Batch } from '../../src/engine/batch'
import type { Value } from '../../src/functions/define'
import type { Bench, Column } from '../../src/planner/bench'
import { makePlan, type PlanRequest } from '../../src/planner/makePlan'
import { type PlanRules, RULES } from '../../src/planner/rules'
import type { Plan } from '../../src/planner/step'
import { shippedCatalog } from '../../src/worksheet/shippedCatalog'

const catalog = shippedCatalog()
const batches = new Map<readonly string[], Batch>()

function batchFor(wanted: readonly string[]): Batch {
  const batch = batches.get(wanted) ?? new Batch(catalog, wanted, 16)
  batches.set(wanted, batch)
  return batch
}

/** The shipped worksheets in the real engine. */
export const bench: Bench = {
  catalog,
  evaluate: (columns, wanted) =>
    batchFor(wanted)
      .evaluate(columns)
      .map((outcomes) => new Map(outcomes.map((outcome, i) => [wanted[i] ?? '', outcome]))),
}

export type Values = Readonly<Record<string, Value | undefined>>

export function column(values: Values): Column {
  return new Map(Object.entries(values).flatMap(([name, value]) => (value === undefined ? [] : [[name, value]])))
}

export function plan(values: Values, more: Omit<PlanRequest, 'column'> = {}): Plan {
  return makePlan(bench, { column: column(values), ...more })
}

/** The shipped rules without one. */
export function without(...ids: readonly string[]): PlanRules {
  return { ...RULES, rules: new Map([...RULES.rules].filter(([id]) => !ids.includes(id))) }
}

/** An invented vinyl pool of 56.8 m³ with a cell, on target in everything. */
export const POOL: Values = {
  volume: 56.8,
  volume_low: 56.8,
  volume_high: 56.8,
  water_body: 'pool',
  shell: 'vinyl',
  setting: 'outdoor',
  use: 'private',
  sanitizer: 'chlorine',
  pump_flow: 9,
  ph: 7.5,
  temperature: 27,
  free_chlorine: 3,
  total_chlorine: 3.1,
  total_alkalinity: 80,
  calcium_hardness: 250,
  cyanuric_acid: 50,
  salt: 3200,
  chlorine_demand: 2,
  target_ph: 7.5,
  target_total_alkalinity: 80,
  target_free_chlorine: 3,
  target_calcium_hardness: 250,
  target_cyanuric_acid: 50,
  target_salt: 3200,
  cell_salt_low: 2700,
  cell_salt_high: 3400,
  acid_product: 'hydrochloric_acid',
  acid_strength: 31.45,
  acid_strength_basis: 'mass_percent',
  chlorine_product: 'sodium_hypochlorite',
  chlorine_strength: 12.5,
  chlorine_strength_basis: 'trade_percent',
  calcium_product: 'calcium_chloride',
  calcium_strength: 77,
  calcium_strength_basis: 'mass_percent',
  bag_mass: 18.14,
}
