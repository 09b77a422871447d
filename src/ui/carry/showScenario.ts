import type { Edit } from '../../notebook/edit'
import { focusCell } from '../grid/focusCell'
import type { Book } from '../shell/book'
import { cellName } from '../shell/selection'

/** Goes to the first reading of a scenario that was just made. */
export function showScenario(book: Book, edit: Edit): void {
  if (edit.type !== 'add_scenario') return
  const row = book.rows().find(({ worksheet }) => worksheet === 'sample')
  if (!row) return
  book.selection.select(cellName(row.key, edit.scenario.id))
  focusCell(book)
}
