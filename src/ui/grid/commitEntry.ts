import type { Edit } from '../../notebook/edit'
import { isProblem } from '../../words/problem'
import type { OutlineQuantity } from '../../worksheet/catalog'
import { noticeText } from '../noticeText'
import { announce } from '../shell/announce'
import type { Book } from '../shell/book'
import { formulas, ON_THEIR_WAY, prepareFormulas } from '../shell/formulas'
import { readEntry } from '../shell/readEntry'
import { enterAndLeave, isLeaving } from './leaving'
import { noticesOf } from './noticesOf'

/**
 * Takes what stands in the open editor into the notebook and closes the editor. What cannot be read or taken stays in
 * the editor, with its problem beside it; false then.
 * @param leave closes the editor when it is left by a key, and goes on from there
 */
export function commitEntry(book: Book, entered: string, leave?: () => void): boolean {
  if (isLeaving()) return true
  const { selection } = book
  const close = leave ?? (() => selection.edit(null))
  const cell = selection.cell()
  const editing = selection.editing()
  if (!editing || !cell) return true
  // Opened and left as it was: nothing was entered, and an inherited value stays inherited.
  if (!editing.fresh && entered === editing.text) {
    close()
    return true
  }
  const { scenario, row } = cell
  const unit = book.unit(row.quantity.name)
  const edit = readEntry(entered, { scenario, quantity: row.quantity, unit, notebook: book.notebook() })
  // The editor of formulas has keys of its own, which it must not get once the formula was entered.
  const waits = leave !== undefined && !entered.startsWith('=')
  const fault = isProblem(edit) ? edit : waits ? enterAndLeave(book, edit, close) : book.dispatch(edit)
  if (fault) {
    selection.setFault(fault)
    if (fault.code === ON_THEIR_WAY.code) void prepareFormulas().then(again)
    return false
  }
  if (!waits) close()
  if (!isProblem(edit)) question(edit, row.quantity)
  return true

  /** Once what reads formulas is here, unless the reader went on writing, or left. */
  function again(): void {
    const waits = selection.editing() === editing && selection.fault()?.code === ON_THEIR_WAY.code
    if (waits && formulas()) commitEntry(book, entered)
  }
}

/** An unlikely entry is kept, and asked about. */
function question(edit: Edit, { row }: OutlineQuantity): void {
  if (edit.type !== 'set_cell' || edit.cell?.kind !== 'value') return
  const [notice] = noticesOf(row, { value: edit.cell.canonical, notices: [] })
  if (notice) announce(noticeText(notice))
}
