import type { Cell } from '../../notebook/notebook'
import type { OutlineQuantity } from '../../worksheet/catalog'

/** Whether an entry is asked about: no pool, cell or bag usually has it, and a figure typed in another unit looks so. */
export function isUnlikely(row: OutlineQuantity['row'] | undefined, cell: Cell | null): boolean {
  if (cell?.kind !== 'value' || !row || !('plausible' in row) || !row.plausible) return false
  return cell.canonical < row.plausible[0] || cell.canonical > row.plausible[1]
}
