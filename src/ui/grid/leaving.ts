import type { Edit } from '../../notebook/edit'
import type { Problem } from '../../words/problem'
import type { Book } from '../shell/book'

/** How what is open in a cell is left. */
export interface Leaving {
  /** moves the focus, before anything else changes: moved later, it would have the whole page laid out then and there */
  readonly move: () => void
  readonly close: () => void
}

let leaving: Leaving | null = null

/**
 * Takes an entry in. What it was made in stays drawn until the numbers that follow from it are there, and goes in the same
 * redraw: gone before, it would uncover the old number for a moment, and the page would be drawn twice. A key or a press
 * does not wait.
 */
export function enterAndLeave(book: Book, edit: Edit, mine: Leaving): Problem | null {
  const fault = book.enter(edit, {
    before() {
      if (leaving === mine) mine.move()
    },
    after() {
      if (leaving === mine) end(mine)
    },
  })
  if (fault) return fault
  leaving = mine
  addEventListener('pointerdown', leaveNow, { capture: true })
  return null
}

/** Before anything else is done in the grid. */
export function leaveNow(): void {
  if (!leaving) return
  // It is not over before the focus has moved: an editor that loses it would enter what it holds.
  leaving.move()
  end(leaving)
}

function end({ close }: Leaving): void {
  leaving = null
  removeEventListener('pointerdown', leaveNow, { capture: true })
  close()
}

/** Whether what is open in a cell was entered already. */
export function isLeaving(): boolean {
  return leaving !== null
}
