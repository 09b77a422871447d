import { expect, test } from 'vitest'
import { hasValue } from '../../src/engine/outcome'
import { problemText } from '../../src/ui/problemText'
import { cell, EMPTY, edited } from '../notebook/samples'
import { bookFor } from './bookFor'

test.each([
  // the row is shown in °F, and its formulas count in °C
  ['temperature', '35 * 2', 'gives 70 °C; this row takes 0 to 60 °C.'],
  ['ph', '7 + 8', 'gives 15 pH; this row takes 0 to 14 pH.'],
])('a formula that gives what %s cannot be is refused with the unit of its figures', (quantity, text, says) => {
  const book = bookFor(edited({ ...EMPTY, profile: 'us' }, cell('first', quantity, { kind: 'formula', text })))
  const outcome = book.outcome('first', quantity)
  const about = book.catalog().quantities.get(quantity)
  if (!outcome || hasValue(outcome) || !about) throw new Error('it has a value')
  expect(problemText(outcome.problem, about)).toContain(says)
})
