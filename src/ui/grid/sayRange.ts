import { say } from '../../words/say'
import { announce } from '../shell/announce'
import type { Book } from '../shell/book'

/** Reads out how large the selected range is. */
export function sayRange(book: Book): void {
  if (!book.selection.range()) return
  const { rows, scenarios } = book.selection.block()
  announce(say('page.grid.range', { rows: rows.length, scenarios: scenarios.length }))
}
