import type { Problem } from '../words/problem'
import { say, sentence } from '../words/say'
import type { OutlineQuantity } from '../worksheet/catalog'
import { missingLabels } from './grid/cellView'
import { labelOf } from './labelOf'

/** Why a cell has no value, in full. A problem without a place is about the cell's own quantity. */
export function problemText(problem: Problem, quantity: OutlineQuantity): string {
  if (problem.code === 'missing') {
    if (!quantity.formula) return say('page.reading_missing', { name: labelOf(quantity.name, quantity.row) })
    return say('page.needs_readings', { names: missingLabels(problem.facts.names) })
  }
  const path = problem.path.length > 0 ? problem.path : [labelOf(quantity.name, quantity.row)]
  return sentence({ ...problem, path })
}
