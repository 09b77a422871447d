import type { DecimalMark } from '../units/readNumber'
import type { Matched } from './columns'
import { numbersOf, share } from './evidence'
import type { Known } from './known'
import type { LabUnit } from './labUnit'
import type { RawColumn } from './layout'

/**
 * Results without a unit beside others of the same analyte that have one: most likely theirs, then what laboratories use.
 * Readings decide, as they do where nothing is said.
 */
export function unitOfOthers(alone: Matched, stated: Matched): Matched {
  const unit = stated.column.unit
  if (unit === null || stated.question !== null) return alone
  const why = [
    ...stated.column.why.filter(({ code }) => code !== 'unit_unsaid'),
    { code: 'unit_of_others', facts: { unit: unit.code } },
  ]
  const others = alone.units.filter(({ code }) => code !== unit.code)
  const confidence = Math.min(stated.column.confidence, 0.8)
  return {
    column: { ...stated.column, unitText: null, why, confidence },
    question: null,
    units: [unit, ...others],
  }
}

/** How far results of one analyte in one unit lie apart in one file; units that are mistaken for each other lie further. */
const APART = 3

/** Whether results without a unit lie where those with one do, and are likely there: then they are surely in the same unit. */
export function likeOthers(
  [unit]: readonly LabUnit[],
  known: Known,
  { texts, elsewhere }: RawColumn,
  decimal: DecimalMark | null,
): boolean {
  const range = known.plausible ?? known.accept
  if (elsewhere === undefined || unit === undefined) return false
  const [numbers, others] = [numbersOf(texts, decimal), numbersOf(elsewhere.texts, decimal)]
  if (numbers.length === 0 || (range !== undefined && share(numbers, unit, known, range) <= 0.5)) return false
  const least = others.reduce((a, b) => Math.min(a, b), Infinity) / APART
  const most = others.reduce((a, b) => Math.max(a, b), -Infinity) * APART
  return numbers.every((number) => number === 0 || (number >= least && number <= most))
}
