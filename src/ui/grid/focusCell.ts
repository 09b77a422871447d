import type { Book } from '../shell/book'
import { cellName } from '../shell/selection'
import { foldButton } from './FoldButton'
import { isRow } from './line'

/** Puts the focus on the selected cell and brings the end of its range into sight. */
export function focusCell(book: Book): void {
  if (reach(book)) return
  // Inside a batch: what was not in sight is drawn when it ends.
  queueMicrotask(() => reach(book))
}

function reach(book: Book): boolean {
  const { selection } = book
  const element = elementAt(book, selection.position())
  element?.focus({ preventScroll: true })
  const end = selection.range() ? elementAt(book, selection.corner()) : element
  end?.scrollIntoView({ block: 'nearest', inline: 'nearest' })
  return element !== null && end !== null
}

function elementAt(book: Book, { row, column }: { row: number; column: number }): HTMLElement | null {
  const line = book.lines()[row]
  const scenario = book.scenarios()[column]
  if (!line || scenario === undefined) return null
  return document.getElementById(isRow(line) ? cellName(line.key, scenario) : foldButton(line.fold))
}
