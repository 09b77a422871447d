import { Batch } from '../../src/engine/batch'
import type { Bench } from '../../src/planner/bench'
import { type CaseCatalog, caseCatalog } from '../../src/planner/cases/caseCatalog'
import type { CaseSource } from '../../src/planner/cases/caseDefinition'
import { holdingCases } from '../../src/planner/cases/holdingCases'
import { SHIPPED_CASES } from '../../src/planner/cases/shippedCases'
import { type CaseStanding, showing, standings } from '../../src/planner/cases/standing'
import { makePlan, type PlanRequest } from '../../src/planner/makePlan'
import { type PlanRules, RULES } from '../../src/planner/rules'
import type { Plan } from '../../src/planner/step'
import { column, type Values } from './bench'

/** A bench whose catalog knows the cases, and what is asked of it. */
export interface CaseBench {
  readonly known: CaseCatalog
  readonly bench: Bench
  readonly stand: (values: Values) => readonly CaseStanding[]
  readonly show: (cases: readonly CaseStanding[], values: Values) => readonly CaseStanding[]
  readonly plan: (values: Values, chosen?: readonly string[], more?: Omit<PlanRequest, 'column' | 'cases'>) => Plan
}

export function caseBench(own: readonly CaseSource[] = [], rules: PlanRules = RULES): CaseBench {
  const known = caseCatalog([...SHIPPED_CASES, ...own], rules)
  const batches = new Map<readonly string[], Batch>()
  const bench: Bench = {
    catalog: known.catalog,
    evaluate: (columns, wanted) => {
      const batch = batches.get(wanted) ?? new Batch(known.catalog, wanted, 16)
      batches.set(wanted, batch)
      return batch
        .evaluate(columns)
        .map((outcomes) => new Map(outcomes.map((outcome, i) => [wanted[i] ?? '', outcome])))
    },
  }
  const stand = (values: Values) => standings(bench, known, column(values))
  const show = (cases: readonly CaseStanding[], values: Values) => showing(bench, known, cases, column(values))
  return {
    known,
    bench,
    stand,
    show,
    plan: (values, chosen = [], more = {}) =>
      makePlan(bench, {
        column: column(values),
        cases: show(holdingCases(stand(values), chosen), values),
        rules,
        ...more,
      }),
  }
}
