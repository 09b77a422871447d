import type { Book } from '../shell/book'
import { cellName } from '../shell/selection'
import { FEW } from './drawn'
import { foldButton } from './FoldButton'
import { isRow } from './line'
import type { Position } from './move'
import { leaveSight, stayInSight } from './stayInSight'

/** Puts the focus on the selected cell and brings the end of its range into sight. */
export function focusCell(book: Book): void {
  const before = document.activeElement
  if (!reach(book)) {
    // Inside a batch: what was not in sight is drawn when it ends. What the same key has opened since keeps the focus.
    queueMicrotask(() => {
      const now = document.activeElement
      if (now === before || now === document.body) reach(book)
    })
  }
  // Of many scenarios the rows are drawn as they come into sight, and grow as they are.
  if (book.scenarios().length > FEW) stay(book)
}

function reach(book: Book): boolean {
  const { selection } = book
  const element = elementAt(book, selection.position())
  // A stop of the Tab key before it has the focus: made one afterwards, it would have the whole page laid out.
  if (element?.matches('.cell') && element !== document.activeElement) element.tabIndex = 0
  element?.focus({ preventScroll: true })
  const end = selection.range() ? elementAt(book, selection.corner()) : element
  end?.scrollIntoView({ block: 'nearest', inline: 'nearest' })
  return element !== null && end !== null
}

function stay(book: Book): void {
  const { position, corner } = book.selection
  const [start, end] = [position(), corner()]
  // the same function each time: however often it is asked for, the page has it once
  for (const type of ['wheel', 'touchmove', 'pointerdown']) addEventListener(type, leaveSight, { passive: true })
  stayInSight(() => {
    if (!isSame(position(), start) || !isSame(corner(), end)) return null
    const element = elementAt(book, end)
    if (!element) return null
    element.scrollIntoView({ block: 'nearest', inline: 'nearest' })
    return element.getBoundingClientRect().top
  })
}

function isSame(a: Position, b: Position): boolean {
  return a.row === b.row && a.column === b.column
}

function elementAt(book: Book, { row, column }: Position): HTMLElement | null {
  const line = book.lines()[row]
  const scenario = book.scenarios()[column]
  if (!line || scenario === undefined) return null
  return document.getElementById(isRow(line) ? cellName(line.key, scenario) : foldButton(line.fold))
}
