import type { Value } from '../../functions/define'
import { FORETOLD } from '../../planner/bench'
import type { Plan } from '../../planner/step'

/** Readings of a plan's end that hold: what its steps foretell, and what none of them moves. */
const HOLDS = [
  ...Object.keys(FORETOLD),
  'temperature',
  'alkalinity_bottle',
  'phosphate',
  'copper',
  'iron',
  'manganese',
  'magnesium',
]

/**
 * The water that a plan ends with, as far as it holds; null for a reading that holds and is not known. Of a plan that goes
 * no further before something is tested or known nothing is: where it stops is no end of it.
 */
export function planEnd(plan: Plan | null): ReadonlyMap<string, Value | null> {
  const end = plan?.complete ? plan.end : null
  return new Map(HOLDS.map((quantity) => [quantity, end?.get(quantity) ?? null]))
}
