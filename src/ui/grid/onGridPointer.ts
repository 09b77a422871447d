import type { Book } from '../shell/book'
import { commitEntry } from './commitEntry'
import { dragRange } from './dragRange'
import { focusCell } from './focusCell'
import { openEditor } from './openEditor'
import { sayRange } from './sayRange'
import { selectWhole } from './selectWhole'

/** The cell that an event happened in. */
export function cellOf(event: Event): Element | null {
  return event.target instanceof Element ? event.target.closest('.cell') : null
}

/** Whether an event happened in something that is open over a cell. */
export function isInOpen(event: Event): boolean {
  return event.target instanceof Element && event.target.closest('.editor, .choices') !== null
}

/**
 * A press in the grid: on a cell it selects, with Shift or after "select up to" it reaches from the selected cell to this
 * one, and with a mouse it goes on reaching while it is held; on a row's name it selects the row.
 */
export function onGridPress(book: Book, event: PointerEvent, reaching: boolean): void {
  if (event.button !== 0 || isInOpen(event)) return
  const cell = cellOf(event)
  const row = event.target instanceof Element ? event.target.closest('.row > .quantity[id]') : null
  const name = cell?.id ?? (row ? `${row.id.slice('name-'.length)}@${book.baseline()}` : null)
  if (name === null || !entered(book, event)) return
  const { selection } = book
  const again = selection.isSelected(name) && !selection.range() && event.pointerType === 'touch'
  const to = selection.placeOf(name)
  if ((event.shiftKey || reaching) && to) selection.extendTo(to)
  else selection.select(name)
  if (row) selectWhole(book, 'row')
  if (selection.range()) sayRange(book)
  if (again && !row) openEditor(book)
  else if (cell && event.pointerType === 'mouse') dragRange(book, { x: event.clientX, y: event.clientY })
  else if (row) focusCell(book)
}

/** Enters what an open editor holds; the press waits when it cannot be entered. */
function entered(book: Book, event: Event): boolean {
  const editor = document.querySelector<HTMLInputElement>('.cell .editor input')
  if (!editor || commitEntry(book, editor.value)) return true
  event.preventDefault()
  editor.focus()
  return false
}
