import { FUNCTIONS } from '../../functions/registry'
import { type Problem, problem } from '../../words/problem'
import type { Outline } from '../../worksheet/catalog'
import { meaningOf } from '../../worksheet/place'
import { QUANTITY_NAME } from '../../worksheet/quantityName'
import type { RowDraft } from './rowDraft'

/**
 * Why a row that is being written cannot have its name; null while it can, and before anything is written.
 * @param own its name until now, where it has one
 */
export function nameFault(
  { name, label }: Pick<RowDraft, 'name' | 'label'>,
  { quantities, solves }: Pick<Outline, 'quantities' | 'solves'>,
  own?: string,
): Problem | null {
  const found = name.trim()
  if (found === own || (found === '' && label.trim() === '')) return null
  if (!QUANTITY_NAME.test(found)) return problem('rows_name', [], { found })
  if (quantities.has(found) || solves.has(found)) return problem('row_name_taken', [], { name: found })
  const meaning = meaningOf(found, { shipped: false }, FUNCTIONS)
  return meaning && problem(meaning, [], { name: found })
}
