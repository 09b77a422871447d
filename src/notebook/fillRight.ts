import type { Outline } from '../worksheet/catalog'
import type { CellBlock } from './clearCells'
import type { Edit } from './edit'
import { cellKey, type Notebook } from './notebook'
import { own } from './own'
import { resolve } from './resolve'
import { sameCell } from './sameCell'
import { together } from './together'

/**
 * What stands in the first scenario of the block, entered in the others of it, as one step. A reading of its sample or a
 * value that it follows is entered as such, and no longer followed. Worked-out rows follow their formulas; only what is
 * typed over one is filled. Null where that changes nothing.
 */
export function fillRight(
  notebook: Notebook,
  catalog: Pick<Outline, 'quantities'>,
  { quantities, scenarios }: CellBlock,
): Edit | null {
  const [first, ...others] = scenarios
  if (first === undefined) return null
  const edits = [...new Set(quantities)].flatMap((quantity) => {
    const { from, cell } = resolve(notebook, catalog, first, quantity)
    if (catalog.quantities.get(quantity)?.formula && from !== 'typed') return []
    return others
      .filter((scenario) => !sameCell(own(notebook.cells, cellKey(scenario, quantity)), cell))
      .map((scenario): Edit => ({ type: 'set_cell', scenario, quantity, cell }))
  })
  return edits.length === 0 ? null : together(...edits)
}
