import type { Book } from '../shell/book'
import { cellName } from '../shell/selection'

/** Puts the focus on the selected cell and brings it into sight. */
export function focusCell(book: Book): void {
  const cell = book.selection.cell()
  if (!cell) return
  const element = document.getElementById(cellName(cell.row.key, cell.scenario))
  element?.focus({ preventScroll: true })
  element?.scrollIntoView({ block: 'nearest', inline: 'nearest' })
}
