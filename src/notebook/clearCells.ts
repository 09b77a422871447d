import type { Edit } from './edit'
import { cellKey, type Notebook } from './notebook'
import { own } from './own'
import { together } from './together'

/** Cells by what they stand for: every pair of a scenario and a quantity. */
export interface CellBlock {
  readonly quantities: readonly string[]
  readonly scenarios: readonly string[]
}

/** Takes out what was typed in these cells, as one step: each falls to its next source. Null where nothing was typed. */
export function clearCells(notebook: Notebook, { quantities, scenarios }: CellBlock): Edit | null {
  const edits = scenarios.flatMap((scenario) =>
    [...new Set(quantities)]
      .filter((quantity) => own(notebook.cells, cellKey(scenario, quantity)) !== undefined)
      .map((quantity): Edit => ({ type: 'set_cell', scenario, quantity, cell: null })),
  )
  return edits.length === 0 ? null : together(...edits)
}
