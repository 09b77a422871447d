import type { Definition } from '../../worksheet/definition'
import { labelOf } from '../labelOf'
import type { GridRow } from './gridRow'
import { worksheetLabel } from './worksheetLabel'

/**
 * The rows that a reader may mean: each word typed is somewhere in the label, the name or the worksheet's label. A
 * label that begins so comes first, and a quantity's own worksheet before those that show it too.
 */
export function matchRows(
  rows: readonly GridRow[],
  worksheets: readonly Definition[],
  typed: string,
): readonly GridRow[] {
  const words = folded(typed)
    .split(/\s+/)
    .filter((word) => word !== '')
  if (words.length === 0) return []
  const titles = new Map(worksheets.map((definition) => [definition.id, folded(worksheetLabel(definition))]))
  const ranked = rows.flatMap((row) => {
    const label = folded(labelOf(row.quantity.name, row.quantity.row))
    const names = `${label} ${row.quantity.name} ${row.quantity.name.replaceAll('_', ' ')}`
    const all = `${names} ${titles.get(row.worksheet) ?? ''}`
    if (!words.every((word) => all.includes(word))) return []
    const start = words.join(' ')
    const inName = words.every((word) => names.includes(word))
    const away = row.quantity.worksheet === row.worksheet ? 0 : 1
    return [{ row, rank: (label.startsWith(start) ? 0 : inName ? 2 : 4) + away }]
  })
  return ranked.sort((a, b) => a.rank - b.rank).map(({ row }) => row)
}

/** Without case and accents. */
function folded(text: string): string {
  return text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase().trim()
}
