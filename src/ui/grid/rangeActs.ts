import { clearCells } from '../../notebook/clearCells'
import type { Edit } from '../../notebook/edit'
import { fillRight } from '../../notebook/fillRight'
import { say, sentence } from '../../words/say'
import { announce } from '../shell/announce'
import type { Book } from '../shell/book'
import { blockOf } from './blockOf'

/** Takes out what was typed in the selected cells. */
export function clearRange(book: Book): void {
  send(book, clearCells(book.notebook(), blockOf(book)), 'page.grid.cleared')
}

/** Fills the selected cells from the first scenario of the range; a single one from the scenario left of it. */
export function fillRange(book: Book): void {
  const { quantities, scenarios } = blockOf(book)
  const all = book.scenarios()
  const left = all[all.indexOf(scenarios[0] ?? '') - 1]
  const from = scenarios.length === 1 && left !== undefined ? [left, ...scenarios] : scenarios
  send(book, fillRight(book.notebook(), book.catalog(), { quantities, scenarios: from }), 'page.grid.filled')
}

function send(book: Book, edit: Edit | null, done: 'page.grid.cleared' | 'page.grid.filled'): void {
  if (!book.writable()) {
    announce(say('page.read_only_short'))
    return
  }
  const trouble = edit && book.dispatch(edit)
  const count = edit?.type === 'together' ? edit.edits.length : edit ? 1 : 0
  announce(trouble ? sentence(trouble) : say(done, { count }))
}
