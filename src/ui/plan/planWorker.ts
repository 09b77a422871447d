import { Batch } from '../../engine/batch'
import type { Bench, Column } from '../../planner/bench'
import { type CaseCatalog, caseCatalog } from '../../planner/cases/caseCatalog'
import { caseSources } from '../../planner/cases/caseSources'
import { type CaseLine, planWithCases } from '../../planner/cases/planWithCases'
import { changeRules, type RuleChanges } from '../../planner/changeRules'
import type { Shelf } from '../../planner/shelf'
import type { Plan } from '../../planner/step'
import type { Profile } from '../../units/profile'
import type { Problem } from '../../words/problem'
import type { TargetSet } from '../../worksheet/definition'

/** Where a plan is made: the planner decides, the worksheets of the same engine compute. One request, one plan, in order. */
export interface PlanAsked {
  readonly id: number
  readonly column: Column
  readonly shelf: Shelf
  /** readings that are only a limit of their test */
  readonly censored: ReadonlySet<string>
  /** case files of the notebook's own, by id, and the cases that the reader chose */
  readonly cases: Readonly<Record<string, unknown>>
  readonly chosen: readonly string[]
  /** sets of ranges of the reader's own */
  readonly sets: readonly TargetSet[]
  /** values of the rules that the reader changed */
  readonly rules: RuleChanges
  readonly profile: Profile
}
export interface PlanMade {
  readonly id: number
  readonly plan: Plan | null
  readonly cases: readonly CaseLine[]
  /** what of the notebook's own cases and values does not hold, and why */
  readonly refused: readonly Problem[]
}

/** Waters that the planner compares at once are few. */
const WIDTH = 8

interface Desk {
  readonly key: string
  readonly known: CaseCatalog
  readonly bench: Bench
  readonly refused: readonly Problem[]
}
let desk: Desk | null = null

/** The bench for these cases and rules; the one before serves as long as they stay the same. */
function deskFor({ cases, rules, sets }: PlanAsked): Desk {
  const key = JSON.stringify([cases, rules, sets])
  if (desk?.key === key) return desk
  const own = caseSources(cases)
  const changed = changeRules(rules)
  const known = caseCatalog(own.sources, changed.rules, sets)
  const batches = new Map<readonly string[], Batch>()
  const bench: Bench = {
    catalog: known.catalog,
    evaluate(columns, wanted) {
      const batch = batches.get(wanted) ?? new Batch(known.catalog, wanted, WIDTH)
      batches.set(wanted, batch)
      return batch
        .evaluate(columns)
        .map((outcomes) => new Map(outcomes.map((outcome, i) => [wanted[i] ?? '', outcome])))
    },
  }
  desk = { key, known, bench, refused: [...own.refused, ...changed.refused] }
  return desk
}

addEventListener('message', ({ data }: MessageEvent<PlanAsked>) => {
  let made: PlanMade = { id: data.id, plan: null, cases: [], refused: [] }
  try {
    const { bench, known, refused } = deskFor(data)
    const { column, shelf, censored, profile } = data
    const planned = planWithCases(bench, known, { column, shelf, censored, profile }, data.chosen)
    made = { id: data.id, ...planned, refused: [...refused, ...planned.refused] }
  } catch (error) {
    // The page says that there is no plan; what went wrong is for whoever looks at the console.
    console.error(error)
  }
  postMessage(made)
})
