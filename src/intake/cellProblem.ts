import { type Problem, problem } from '../words/problem'

const LONGEST_FOUND = 60

/**
 * What is wrong with one cell, or with a row where there is no column: facts `row` (as text: it is a name, not a
 * measurement), `column` and `found`, for a list of refused rows.
 */
export function cellProblem(
  code: string,
  row: number,
  column: string,
  found: string,
  facts: Problem['facts'] = {},
): Problem {
  const text = found.trim()
  return problem(code, [column === '' ? `row ${row}` : `row ${row}: ${column}`], {
    ...facts,
    row: String(row),
    column,
    found: text.length > LONGEST_FOUND ? `${text.slice(0, LONGEST_FOUND)}…` : text,
  })
}
