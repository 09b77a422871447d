import type { Column } from '../../planner/bench'
import { RULES, ruleValue } from '../../planner/rules'
import type { Plan, Say } from '../../planner/step'

/**
 * The number of the step after which a new test may let people swim again: the first after which the water that is foretold has
 * none of the reasons against it, nor has it later, as far as that can be foretold. Null where no step brings that about.
 */
export function swimAgainAfter({ steps, swim }: Plan): number | null {
  if (swim.reasons.length === 0) return null
  const clear = steps.map(({ water }) => {
    const gone = swim.reasons.map((reason) => isGone(reason, water))
    return gone.includes(false) ? false : gone.includes(undefined) ? undefined : true
  })
  const first = clear.findIndex((now, at) => now === true && !clear.slice(at).includes(false))
  return first < 0 ? null : first + 1
}

/** Undefined where the water at that step is not known well enough. */
function isGone({ key, facts }: Say, water: Column): boolean | undefined {
  const number = (name: string) => {
    const value = water.get(name)
    return typeof value === 'number' ? value : undefined
  }
  const fact = (name: string) => (typeof facts[name] === 'number' ? facts[name] : Number.NaN)
  const free = number('free_chlorine')
  const ph = number('ph')
  switch (key) {
    case 'plan.swim.chlorine_low':
      return free === undefined ? undefined : free >= fact('least')
    case 'plan.swim.chlorine_high':
      return free === undefined ? undefined : free <= fact('most')
    case 'plan.swim.ratio': {
      const stabilizer = number('cyanuric_acid')
      return free === undefined || stabilizer === undefined ? undefined : stabilizer <= fact('closing') * free
    }
    case 'plan.swim.ph':
      return ph === undefined ? undefined : ph >= limit('ph_least') && ph <= limit('ph_most')
    default:
      // a reading that has to be tested, combined chlorine, cloudy water: no step foretells them
      return false
  }
}

function limit(name: string): number {
  return ruleValue(RULES, 'swim_again', name) ?? Number.NaN
}
