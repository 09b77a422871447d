import { convertDifference } from '../../units/convert'
import { isProblem } from '../../words/problem'
import type { Book } from '../shell/book'
import { unitWords } from '../unitWords'
import { figureIn } from './figureIn'

/** A half width in the reader's unit, with as many figures as it needs. A difference of temperatures has no offset. Tracked. */
export function halfText(book: Book, quantity: string, half: number): string {
  return `${halfFigure(book, quantity, half)} ${unitWords(book.unit(quantity))}`.trim()
}

export function halfFigure(book: Book, quantity: string, half: number): string {
  const row = book.catalog().quantities.get(quantity)?.row
  const shown = row ? convertDifference(half, row.unit, book.unit(quantity)) : half
  return figureIn(isProblem(shown) ? half : shown, 3)
}
