import type { Problem } from '../../words/problem'
import type { Bench } from '../bench'
import { makePlan, type PlanRequest } from '../makePlan'
import type { Plan } from '../step'
import type { CaseCatalog } from './caseCatalog'
import { holdingCases } from './holdingCases'
import { showing, standings, type Told, told } from './standing'

/** How one case stands beside a plan. */
export interface CaseLine {
  readonly id: string
  readonly shipped: boolean
  /** the reader's own bring their label */
  readonly label?: string
  readonly when: Told
  readonly followed: boolean
}

export interface PlanWithCases {
  readonly plan: Plan
  readonly cases: readonly CaseLine[]
  /** cases that are left out, and why */
  readonly refused: readonly Problem[]
}

/**
 * A plan with the cases that hold: those that the reader chose, and those that stop something.
 * @param bench its catalog is that of `known`
 */
export function planWithCases(
  bench: Bench,
  known: CaseCatalog,
  request: Omit<PlanRequest, 'cases' | 'rules'>,
  chosen: readonly string[],
): PlanWithCases {
  const all = standings(bench, known, request.column)
  const holding = holdingCases(all, chosen)
  const cases = showing(bench, known, holding, request.column)
  return {
    plan: makePlan(bench, { ...request, cases, rules: known.rules }),
    cases: all.map((standing) => {
      const { definition, shipped } = standing.source
      return {
        id: definition.id,
        shipped,
        ...(definition.label === undefined ? {} : { label: definition.label }),
        when: told(standing, 'when'),
        followed: holding.includes(standing),
      }
    }),
    refused: known.refused,
  }
}
