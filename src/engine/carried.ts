import { CellError, type DetailedCellError, ErrorType } from 'hyperformula'
import { type Problem, problem } from '../words/problem'

/**
 * A problem travels through the engine inside an error value: the message is its code and facts as JSON, and every
 * operator, reference and function of the engine hands the error on as it is.
 */
export function carry(code: string, facts: Problem['facts']): CellError {
  return new CellError(ErrorType.VALUE, JSON.stringify([code, facts]))
}

/** The problem inside an error value; the engine's own errors become problems of ours here. */
export function carried(error: CellError | DetailedCellError): Problem {
  const { message, type } = error
  if (message?.startsWith('["')) {
    const [code, facts] = JSON.parse(message) as [string, Problem['facts']]
    return problem(code, [], facts)
  }
  return problem(ENGINE_ERRORS[type] ?? 'not_computable')
}

const ENGINE_ERRORS: Partial<Record<ErrorType, string>> = {
  [ErrorType.DIV_BY_ZERO]: 'division_by_zero',
  [ErrorType.CYCLE]: 'circular',
  [ErrorType.NUM]: 'no_number',
}

const MISSING = '["missing"'

/** A reading that was not taken, or a result that waits for one. */
export function isMissing(value: unknown): value is CellError {
  return value instanceof CellError && (value.message?.startsWith(MISSING) ?? false)
}
