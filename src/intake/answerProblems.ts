import { isProblem, type Problem, problem } from '../words/problem'
import type { Known } from './known'
import { labUnit } from './labUnit'
import type { Answers, Column } from './understanding'

/** Answers that cannot hold: a quantity that is not known, a unit that the quantity cannot have. An answer is never passed over. */
export function answerProblems(
  answers: Answers,
  columns: readonly Column[],
  known: ReadonlyMap<string, Known>,
): readonly Problem[] {
  return Object.entries(answers.columns ?? {}).flatMap(([heading, { quantity, unit }]) => {
    if (quantity !== undefined && !known.has(quantity))
      return [problem('lab_answer_quantity', [heading], { found: quantity })]
    if (unit === undefined) return []
    const name = quantity ?? columns.find((column) => column.heading === heading)?.quantity ?? null
    const one = known.get(name ?? '')
    if (one !== undefined && !isProblem(labUnit(unit, one))) return []
    const refused = columns.some((column) => column.heading === heading)
    return refused || one !== undefined
      ? [problem('lab_answer_unit', [heading], { found: unit, quantity: name ?? '' })]
      : []
  })
}
