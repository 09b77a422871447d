import { restsOn } from '../../study/restsOn'
import type { SolveOrder } from '../../study/solveBack'
import { type Problem, problem } from '../../words/problem'
import { decimalsOf } from '../decimalsOf'
import { labelOf } from '../labelOf'
import type { Book } from '../shell/book'
import { axisOf } from './axis'
import { type Entered, isUnread } from './entered'
import { studyColumn } from './studyColumn'

/** What the fields for solving back hold. */
export interface SolveFields {
  readonly scenario: string
  readonly output: string
  readonly input: string
  readonly wanted: Entered
  readonly from: Entered
  readonly to: Entered
}

/**
 * The fields as an order, or why there is none; null until the engine has answered. A field that is empty or cannot be read refuses:
 * what stood in it before is not what is asked for now.
 */
export function solveOrder(book: Book, fields: SolveFields): SolveOrder | readonly Problem[] | null {
  const { scenario, output, input, wanted, from, to } = fields
  const label = (name: string) => labelOf(name, book.catalog().quantities.get(name)?.row)
  const unread = [wanted, from, to].filter(isUnread)
  if (unread.length > 0) return unread.map(({ why }) => why)
  if (typeof wanted !== 'number') return [problem('study_needs_wanted', [label(output)])]
  if (typeof from !== 'number' || typeof to !== 'number') return [problem('study_needs_span', [label(input)])]
  if (!(from < to)) return [problem('span_empty')]
  if (!restsOn(book.catalog(), output).has(input))
    return [problem('study_not_read', [], { output: label(output), input: label(input) })]
  const column = studyColumn(book, scenario, [input, output])
  const row = book.catalog().quantities.get(output)?.row
  if (!column || !row) return null
  const axis = axisOf(book, input)
  return {
    column,
    input,
    from,
    to,
    output,
    wanted,
    // a hundredth of the last place that is shown
    tolerance: 10 ** -(decimalsOf(row) + 2),
    canonicalUnit: axis.canonical,
    unit: axis.unit,
  }
}

export function isRefusal(order: SolveOrder | readonly Problem[] | null): order is readonly Problem[] {
  return Array.isArray(order)
}
