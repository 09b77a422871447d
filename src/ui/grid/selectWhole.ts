import type { Book } from '../shell/book'
import { rangeOf } from './range'

export type Whole = 'row' | 'scenario' | 'worksheet'

/**
 * Widens the selection: to the whole rows that it touches, to its whole scenarios in this worksheet, to the whole
 * worksheet. What is a whole worksheet already becomes all of them.
 */
export function selectWhole(book: Book, what: Whole): void {
  const { selection } = book
  const lines = book.lines()
  const { top, bottom, left, right } = selection.range() ?? rangeOf(selection.position(), selection.position())
  const worksheet = lines[top]?.worksheet
  const first = lines.findIndex((line) => line.worksheet === worksheet)
  const last = lines.findLastIndex((line) => line.worksheet === worksheet)
  const lastColumn = book.scenarios().length - 1
  switch (what) {
    case 'row':
      selection.selectRange({ row: top, column: 0 }, { row: bottom, column: lastColumn })
      break
    case 'scenario':
      selection.selectRange({ row: first, column: left }, { row: last, column: right })
      break
    case 'worksheet': {
      const isWhole = top === first && bottom === last && left === 0 && right === lastColumn
      const [from, to] = isWhole ? [0, lines.length - 1] : [first, last]
      selection.selectRange({ row: from, column: 0 }, { row: to, column: lastColumn })
    }
  }
}
