import { hasValue, type Outcome } from '../../engine/outcome'
import { cellView } from '../grid/cellView'
import { problemText } from '../problemText'
import type { Book } from '../shell/book'
import { shownValue } from '../shownValue'
import { unitWords } from '../unitWords'

/** An outcome in words: the value with its unit, or why there is none. */
export function outcomeText(
  book: Pick<Book, 'catalog' | 'unit'>,
  quantity: string,
  outcome: Outcome | undefined,
): string {
  const known = book.catalog().quantities.get(quantity)
  if (!known || outcome === undefined) return ''
  if (!hasValue(outcome)) return problemText(outcome.problem, known)
  const unit = book.unit(quantity)
  const view = cellView({
    row: known.row,
    outcome,
    base: undefined,
    source: { from: 'none', cell: null },
    unit,
    band: undefined,
  })
  const value = view.figures ? view.figures.whole + view.figures.fraction : view.text
  return typeof outcome.value === 'number' ? `${value} ${unitWords(unit)}`.trim() : value
}

/** What stands in a cell, as its worksheet shows it, or why nothing does. Tracked. */
export function cellText(book: Book, scenario: string, quantity: string): string {
  return shownValue(book, scenario, quantity) || outcomeText(book, quantity, book.outcome(scenario, quantity))
}
