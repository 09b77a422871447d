import { hasValue } from '../engine/outcome'
import { cellView } from './grid/cellView'
import type { Book } from './shell/book'
import { unitWords } from './unitWords'

/** A cell's value with its unit, as a sentence would have it; empty where there is none. Tracked. */
export function shownValue(
  book: Pick<Book, 'outcome' | 'catalog' | 'unit' | 'source'>,
  scenario: string,
  quantity: string,
): string {
  const outcome = book.outcome(scenario, quantity)
  const row = book.catalog().quantities.get(quantity)?.row
  if (!row || !hasValue(outcome)) return ''
  const unit = book.unit(quantity)
  const view = cellView({
    row,
    outcome,
    base: undefined,
    source: book.source(scenario, quantity),
    unit,
    band: undefined,
  })
  const value = view.figures ? view.figures.whole + view.figures.fraction : view.text
  return typeof outcome.value === 'number' ? `${value} ${unitWords(unit)}`.trim() : value
}
