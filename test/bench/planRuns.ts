import { Batch } from '../../src/engine/batch'
import type { Bench } from '../../src/planner/bench'
import { makePlan } from '../../src/planner/makePlan'
import { shippedCatalog } from '../../src/worksheet/shippedCatalog'
import { waters } from './waters'

/** A plan for each of so many invented waters; gives the number of columns that the planner had worked out. */
export function plans(count: number): () => number {
  const batches = new Map<readonly string[], Batch>()
  let columns = 0
  const bench: Bench = {
    catalog: shippedCatalog(),
    evaluate(asked, wanted) {
      columns += asked.length
      const batch = batches.get(wanted) ?? new Batch(shippedCatalog(), wanted, 8)
      batches.set(wanted, batch)
      return batch.evaluate(asked).map((outcomes) => new Map(outcomes.map((o, i) => [wanted[i] ?? '', o])))
    },
  }
  const pool = Object.entries({
    volume: 56.8,
    water_body: 'pool',
    shell: 'vinyl',
    setting: 'outdoor',
    use: 'private',
    sanitizer: 'chlorine',
    pump_flow: 9,
    target_ph: 7.5,
    target_total_alkalinity: 90,
    target_free_chlorine: 3,
    target_cyanuric_acid: 40,
    cell_salt_low: 2700,
    cell_salt_high: 3400,
    acid_product: 'hydrochloric_acid',
    acid_strength: 31.45,
    acid_strength_basis: 'mass_percent',
    chlorine_product: 'sodium_hypochlorite',
    chlorine_strength: 10,
    chlorine_strength_basis: 'trade_percent',
  })
  const asked = waters(count).map((water) => new Map([...pool, ...water]))
  return () => {
    columns = 0
    for (const column of asked) makePlan(bench, { column })
    return columns
  }
}
