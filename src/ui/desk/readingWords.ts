import { reopen } from '../../units/reopen'
import type { Book } from '../shell/book'
import { unitWords } from '../unitWords'

/** The baseline's reading as it was written, with its unit; empty where there is no figure. Tracked. */
export function readingWords(book: Book, quantity: string): string {
  const { cell } = book.source(book.baseline(), quantity)
  if (cell?.kind !== 'value' && cell?.kind !== 'limit') return ''
  const unit = book.unit(quantity)
  const figures = reopen(cell, unit)
  return cell.unit === unit ? `${figures} ${unitWords(unit)}`.trim() : figures
}
