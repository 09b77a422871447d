import type { Column } from '../../planner/bench'
import { RULES, ruleValue } from '../../planner/rules'
import type { Plan, Say } from '../../planner/step'

/**
 * The number of the step after which a new test may let people swim again: from there on the water that is foretold has none of
 * the reasons against it any more. Null where no step brings that about, or nobody can foretell it.
 */
export function swimAgainAfter(plan: Plan): number | null {
  const clear = plan.steps.map(({ water }) => plan.swim.reasons.every((reason) => isGone(reason, water)))
  const last = clear.lastIndexOf(false)
  const step = last + 2
  return plan.swim.reasons.length > 0 && last + 1 < clear.length && clear.length > 0 ? step : null
}

function isGone({ key, facts }: Say, water: Column): boolean {
  const number = (name: string) => {
    const value = water.get(name)
    return typeof value === 'number' ? value : undefined
  }
  const free = number('free_chlorine')
  const total = number('total_chlorine')
  const ph = number('ph')
  const stabilizer = number('cyanuric_acid')
  const fact = (name: string) => (typeof facts[name] === 'number' ? facts[name] : undefined)
  switch (key) {
    case 'plan.swim.chlorine_low':
      return free !== undefined && free >= (fact('least') ?? Number.POSITIVE_INFINITY)
    case 'plan.swim.chlorine_high':
      return free !== undefined && free <= (fact('most') ?? 0)
    case 'plan.swim.ratio':
      return free !== undefined && stabilizer !== undefined && stabilizer <= (fact('closing') ?? 0) * free
    case 'plan.swim.ph':
      return ph !== undefined && ph >= (limit('ph_least') ?? 14) && ph <= (limit('ph_most') ?? 0)
    case 'plan.swim.combined':
      return free !== undefined && total !== undefined && total - free < (fact('combined') ?? 0) / 2
    default:
      return false
  }
}

function limit(name: string): number | undefined {
  return ruleValue(RULES, 'swim_again', name)
}
