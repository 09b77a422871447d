import { focusCell } from '../grid/focusCell'
import { afterDrawing } from './afterDrawing'
import type { Book } from './book'
import { goTo } from './place'
import { cellName } from './selection'

/** Goes to a quantity's cell in the worksheets, from wherever on the page; false where it stands on no worksheet. */
export function goToCell(book: Book, scenario: string, quantity: string): boolean {
  const row = book.rows().find((one) => one.quantity.name === quantity)
  if (!row) return false
  book.selection.select(cellName(row.key, scenario))
  addEventListener('hashchange', () => afterDrawing(() => focusCell(book)), { once: true })
  goTo({ page: 'worksheets' })
  return true
}
