import { problem } from '../words/problem'
import type { Catalog } from '../worksheet/catalog'
import type { Expression } from '../worksheet/formula'
import { missingNames, type Standing } from '../worksheet/missingNames'
import { hasValue, type Outcome } from './outcome'

/**
 * The outcome of a quantity, where something is missing with the names of all readings that it waits for: the error
 * that travelled through the formulas carries only the first of them.
 * @param entered the formula that was entered in place of the quantity's own, if one was
 */
export function withMissing(
  catalog: Catalog,
  quantity: string,
  outcomeOf: (quantity: string) => Outcome,
  entered: (quantity: string) => Expression | undefined = () => undefined,
): Outcome {
  const outcome = outcomeOf(quantity)
  if (hasValue(outcome) || outcome.problem.code !== 'missing') return outcome
  const standing = (name: string): Standing => {
    const other = outcomeOf(name)
    if (hasValue(other)) return 'value'
    if (other.problem.code !== 'missing') return 'refused'
    const tree = entered(name)
    const waits = String(other.problem.facts.names ?? '')
    return tree ? { waits, tree } : { waits }
  }
  const names = missingNames(catalog, quantity, standing)
  return names.length === 0 ? outcome : { ...outcome, problem: problem('missing', [], { names }) }
}
