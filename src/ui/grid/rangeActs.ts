import { clearCells } from '../../notebook/clearCells'
import type { Edit } from '../../notebook/edit'
import { fillRight } from '../../notebook/fillRight'
import { say, sentence } from '../../words/say'
import { announce } from '../shell/announce'
import type { Book } from '../shell/book'
import { blockOf } from './blockOf'
import { leftWhenCleared, leftWhenFilled, withLeft } from './leftAlone'

/** Takes out what was typed in the selected cells. */
export function clearRange(book: Book): void {
  announce(clearing(book).says)
}

/** The same unsaid, for an act that says more. */
export function clearing(book: Book): Done {
  const block = blockOf(book)
  const left = leftWhenCleared(book.notebook(), book.catalog(), block)
  return send(book, clearCells(book.notebook(), block), 'page.grid.cleared', left)
}

/** Fills the selected cells from the first scenario of the range; a single one from the scenario left of it. */
export function fillRange(book: Book): void {
  const { quantities, scenarios } = blockOf(book)
  const all = book.scenarios()
  const before = all[all.indexOf(scenarios[0] ?? '') - 1]
  const from = scenarios.length === 1 && before !== undefined ? [before, ...scenarios] : scenarios
  const block = { quantities, scenarios: from }
  const left = leftWhenFilled(book.notebook(), book.catalog(), block)
  announce(send(book, fillRight(book.notebook(), book.catalog(), block), 'page.grid.filled', left).says)
}

export interface Done {
  readonly says: string
  /** everything was done that was asked for */
  readonly whole: boolean
}

function send(book: Book, edit: Edit | null, done: 'page.grid.cleared' | 'page.grid.filled', left: number): Done {
  if (!book.writable()) return { says: say('page.read_only_short'), whole: false }
  const trouble = edit && book.dispatch(edit)
  if (trouble) return { says: sentence(trouble), whole: false }
  const count = edit?.type === 'together' ? edit.edits.length : edit ? 1 : 0
  return { says: withLeft(say(done, { count }), left), whole: left === 0 }
}
