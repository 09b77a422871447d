import { type Problem, problem } from '../words/problem'
import type { Quantity } from './catalog'

/** What stands in the cells of a quantity whose formula cannot be read, or whose units do not agree; null for all others. */
export function refusalInCell({ name, refused }: Pick<Quantity, 'name' | 'refused'>): Problem | null {
  if (!refused) return null
  return problem(refused.code.startsWith('units_') ? 'units_flagged' : 'formula_refused', [], { name })
}
