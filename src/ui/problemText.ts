import type { Problem } from '../words/problem'
import { say, sentence } from '../words/say'
import type { OutlineQuantity } from '../worksheet/catalog'
import { missingLabels } from './grid/cellView'
import { labelOf } from './labelOf'

const SILENCED = new Set(['units_flagged', 'formula_refused'])

/** Why a cell has no value, in full. A problem without a place is about the cell's own quantity. */
export function problemText(problem: Problem, quantity: OutlineQuantity): string {
  if (problem.code === 'missing') {
    if (!quantity.formula) return say('page.reading_missing', { name: labelOf(quantity.name, quantity.row) })
    return say('page.needs_readings', { names: missingLabels(problem.facts.names) })
  }
  // Of the row itself the very reason; what reads it only says which row it waits for.
  const { refused } = quantity
  if (refused && problem.facts.name === quantity.name && SILENCED.has(problem.code))
    return sentence({ ...refused, path: [labelOf(quantity.name, quantity.row)] })
  const path = problem.path.length > 0 ? problem.path : [labelOf(quantity.name, quantity.row)]
  return sentence({ ...problem, path })
}
