import { type Chosen, costOf } from './choose'
import type { Step } from './step'

/** What so much of the chosen product costs, and what the runner-up would have cost; nothing where a price is not known. */
export function costNow(chosen: Chosen, amount: number): Pick<Step, 'cost'> {
  const cost = costOf(chosen, amount)
  if (cost === undefined) return {}
  const next = chosen.cost?.runnerUp
  const share = chosen.need > 0 ? amount / chosen.need : 0
  return {
    cost: { cost, ...(next ? { runnerUp: { ...next, cost: next.cost * share } } : {}) },
  }
}
