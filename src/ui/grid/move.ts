/** A cell by position: row over all worksheets, column over the scenarios. */
export interface Position {
  readonly row: number
  readonly column: number
}

export interface Size {
  readonly rows: number
  readonly columns: number
  /** how many rows a page is */
  readonly page: number
}

/** What was pressed, as far as moving needs it. */
export interface Press {
  readonly key: string
  readonly ctrl: boolean
  readonly shift: boolean
}

/**
 * Where a key leads in the grid, after the WAI-ARIA grid pattern; rows run on from one worksheet into the next. Null:
 * the key does not move. `'out'`: Tab walked past the last cell, or back before the first, and the focus may leave.
 */
export function move(from: Position, { key, ctrl, shift }: Press, size: Size): Position | 'out' | null {
  const lastRow = size.rows - 1
  const lastColumn = size.columns - 1
  const to = (row: number, column: number): Position => ({
    row: Math.min(Math.max(row, 0), lastRow),
    column: Math.min(Math.max(column, 0), lastColumn),
  })
  switch (key) {
    case 'ArrowUp':
      return ctrl ? to(0, from.column) : to(from.row - 1, from.column)
    case 'ArrowDown':
      return ctrl ? to(lastRow, from.column) : to(from.row + 1, from.column)
    case 'ArrowLeft':
      return ctrl ? to(from.row, 0) : to(from.row, from.column - 1)
    case 'ArrowRight':
      return ctrl ? to(from.row, lastColumn) : to(from.row, from.column + 1)
    case 'PageUp':
      return to(from.row - size.page, from.column)
    case 'PageDown':
      return to(from.row + size.page, from.column)
    case 'Home':
      return ctrl ? to(0, 0) : to(from.row, 0)
    case 'End':
      return ctrl ? to(lastRow, lastColumn) : to(from.row, lastColumn)
    case 'Tab': {
      const cell = from.row * size.columns + from.column + (shift ? -1 : 1)
      if (cell < 0 || cell >= size.rows * size.columns) return 'out'
      return { row: Math.floor(cell / size.columns), column: cell % size.columns }
    }
    default:
      return null
  }
}
