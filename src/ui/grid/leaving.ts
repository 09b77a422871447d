import type { Edit } from '../../notebook/edit'
import type { Problem } from '../../words/problem'
import type { Book } from '../shell/book'

/** Closes what an entry was made in; null where nothing waits for that. */
let closing: (() => void) | null = null

/**
 * Takes an entry in. What it was made in stays drawn until the numbers that follow from it are there, and goes in the same
 * redraw: gone before, it would uncover the old number for a moment, and the page would be drawn twice. A key or a press
 * does not wait.
 */
export function enterAndLeave(book: Book, edit: Edit, close: () => void): Problem | null {
  const fault = book.enter(edit, () => {
    if (closing === close) leaveNow()
  })
  if (fault) return fault
  closing = close
  addEventListener('pointerdown', leaveNow, { capture: true })
  return null
}

/** Before anything else is done in the grid. */
export function leaveNow(): void {
  const close = closing
  closing = null
  removeEventListener('pointerdown', leaveNow, { capture: true })
  close?.()
}

/** Whether what is open in a cell was entered already. */
export function isLeaving(): boolean {
  return closing !== null
}
