import type { Notebook } from './notebook'

/** Whether any formula, in another scenario's cell or in a row of the reader's own, names this scenario. */
export function isLinkedTo({ cells, rows }: Pick<Notebook, 'cells' | 'rows'>, scenario: string): boolean {
  const name = `'${scenario}'.`
  return (
    Object.entries(cells).some(
      ([key, cell]) => cell.kind === 'formula' && cell.text.includes(name) && !key.startsWith(`${scenario}/`),
    ) || Object.values(rows).some(({ row }) => row.formula.includes(name))
  )
}
