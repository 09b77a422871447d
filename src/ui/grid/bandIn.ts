import { hasValue } from '../../engine/outcome'
import type { Value } from '../../functions/define'
import { bandFor, conditionsOf } from '../../worksheet/bandFor'
import type { Band, Row } from '../../worksheet/definition'
import type { Book } from '../shell/book'

/** The band of a row in a scenario: it may hang on the scenario's choices (wall, use, indoors or out). Tracked. */
export function bandIn(book: Book, row: Row, scenario: string): Band | undefined {
  if (!row.target) return undefined
  const values: Record<string, Value> = {}
  for (const quantity of conditionsOf(row)) {
    const outcome = book.outcome(scenario, quantity)
    if (hasValue(outcome)) values[quantity] = outcome.value
  }
  return bandFor(row, values)
}
