import type { Notebook } from './notebook'
import { planOf } from './planLink'

/** Whether anything names this scenario: a formula in another scenario's cell, a row of the reader's own, a cell that follows its plan. */
export function isLinkedTo({ cells, rows }: Pick<Notebook, 'cells' | 'rows'>, scenario: string): boolean {
  const name = `'${scenario}'.`
  return (
    Object.entries(cells).some(
      ([key, cell]) =>
        planOf(cell) === scenario ||
        (cell.kind === 'formula' && cell.text.includes(name) && !key.startsWith(`${scenario}/`)),
    ) || Object.values(rows).some(({ row }) => row.formula.includes(name))
  )
}
