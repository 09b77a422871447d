import { isProblem, type Problem } from '../../words/problem'
import type { Book } from '../shell/book'
import { readEntry } from '../shell/readEntry'

/**
 * Takes what stands in the open editor into the notebook and closes the editor. What cannot be read or taken stays in
 * the editor, with its problem beside it; false then.
 */
export function commitEntry(book: Book, entered: string): boolean {
  const { selection } = book
  const cell = selection.cell()
  const editing = selection.editing()
  if (!editing || !cell) return true
  // Opened and left as it was: nothing was entered, and an inherited value stays inherited.
  if (!editing.fresh && entered === editing.text) {
    selection.edit(null)
    return true
  }
  const fault = take(book, cell.scenario, entered)
  if (fault) selection.setFault(fault)
  else selection.edit(null)
  return fault === null

  function take(from: Book, scenario: string, text: string): Problem | null {
    const quantity = cell?.row.quantity
    if (!quantity) return null
    const edit = readEntry(text, { scenario, quantity, unit: from.unit(quantity.name), notebook: from.notebook() })
    return isProblem(edit) ? edit : from.dispatch(edit)
  }
}
