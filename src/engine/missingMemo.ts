import type { Catalog } from '../worksheet/catalog'
import { withMissing } from './missing'
import { hasValue, type Outcome } from './outcome'

/**
 * `withMissing` for many columns of which most lack the same readings: what a quantity waits for hangs only on how all
 * that it rests on stands, and is looked up where another column stood alike.
 */
export function createMissingMemo(catalog: Catalog, rests: ReadonlyMap<string, readonly string[]>) {
  const known = new Map<string, Map<string, Outcome>>()

  return (quantity: string, outcomeOf: (quantity: string) => Outcome): Outcome => {
    const outcome = outcomeOf(quantity)
    if (hasValue(outcome) || outcome.problem.code !== 'missing') return outcome
    let standing = ''
    for (const name of rests.get(quantity) ?? []) standing += standingOf(outcomeOf(name))
    const ofQuantity = known.get(quantity) ?? new Map<string, Outcome>()
    known.set(quantity, ofQuantity)
    const found = ofQuantity.get(standing)
    if (found && !hasValue(found)) return { problem: found.problem, notices: outcome.notices }
    const whole = withMissing(catalog, quantity, outcomeOf)
    ofQuantity.set(standing, whole)
    return whole
  }
}

function standingOf(outcome: Outcome): string {
  if (hasValue(outcome)) return '1'
  return outcome.problem.code === 'missing' ? `,${String(outcome.problem.facts.names)};` : '0'
}
