import type { GridRow } from './gridRow'

/** What stands in place of the rows of a folded group or worksheet. */
export interface Fold {
  readonly key: string
  readonly worksheet: string
  /** a worksheet's id, or `<worksheet>/<group>` */
  readonly fold: string
}

/** What the arrow keys stop at, from top to bottom of the page. */
export type Line = GridRow | Fold

export function isRow(line: Line | undefined): line is GridRow {
  return line !== undefined && 'quantity' in line
}

/** A fold's id: a group's, or without one that of the whole worksheet. */
export function foldId(worksheet: string, group?: string): string {
  return group === undefined ? worksheet : `${worksheet}/${group}`
}

/** The lines of the page: its rows, with one line for each group or worksheet that is folded. */
export function linesOf(rows: readonly GridRow[], folded: ReadonlySet<string>): readonly Line[] {
  if (folded.size === 0) return rows
  const lines: Line[] = []
  let open = ''
  for (const row of rows) {
    const fold = [foldId(row.worksheet), foldId(row.worksheet, row.group)].find((id) => folded.has(id))
    if (fold === undefined) lines.push(row)
    else if (fold !== open) lines.push({ key: `fold:${fold}`, worksheet: row.worksheet, fold })
    open = fold ?? ''
  }
  return lines
}
