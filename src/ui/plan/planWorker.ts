import { Batch } from '../../engine/batch'
import type { Bench, Column } from '../../planner/bench'
import { makePlan } from '../../planner/makePlan'
import type { Shelf } from '../../planner/shelf'
import type { Plan } from '../../planner/step'
import { shippedCatalog } from '../../worksheet/shippedCatalog'

/** Where a plan is made: the planner decides, the worksheets of the same engine compute. One request, one plan, in order. */
export interface PlanAsked {
  readonly id: number
  readonly column: Column
  readonly shelf: Shelf
  /** readings that are only a limit of their test */
  readonly censored: ReadonlySet<string>
}
export interface PlanMade {
  readonly id: number
  readonly plan: Plan | null
}

/** Waters that the planner compares at once are few. */
const WIDTH = 8

const batches = new Map<readonly string[], Batch>()

const bench: Bench = {
  get catalog() {
    return shippedCatalog()
  },
  evaluate(columns, wanted) {
    const batch = batches.get(wanted) ?? new Batch(shippedCatalog(), wanted, WIDTH)
    batches.set(wanted, batch)
    return batch.evaluate(columns).map((outcomes) => new Map(outcomes.map((outcome, i) => [wanted[i] ?? '', outcome])))
  },
}

addEventListener('message', ({ data }: MessageEvent<PlanAsked>) => {
  let plan: Plan | null = null
  try {
    plan = makePlan(bench, { column: data.column, shelf: data.shelf, censored: data.censored })
  } catch (error) {
    // The page says that there is no plan; what went wrong is for whoever looks at the console.
    console.error(error)
  }
  postMessage({ id: data.id, plan } satisfies PlanMade)
})
