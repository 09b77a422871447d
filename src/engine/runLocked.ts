import { type Failure, isFailure } from '../chemistry/failure'
import { isSolve, type LockedFunction, type Value } from '../functions/define'
import { type Fact, type Problem, problem } from '../words/problem'

/** A value, or why there is none. */
export type Held = Value | Problem

/**
 * Runs a locked function on checked arguments; what it throws is a problem, never an exception. Of a solve, its results
 * in the order of its outputs; or the one problem of all of them.
 */
export function runLocked(f: LockedFunction, values: readonly (Value | undefined)[]): Held | readonly Held[] {
  try {
    if (!isSolve(f)) return held(f.evaluate(...(values as never[])))
    const results = f.solve(...(values as never[]))
    return isFailure(results) ? failed(results) : results.map(held)
  } catch {
    return problem('not_computable', [], { function: f.name })
  }
}

export function isList(result: Held | readonly Held[]): result is readonly Held[] {
  return Array.isArray(result)
}

function held(result: Value | Failure): Held {
  if (isFailure(result)) return failed(result)
  return typeof result === 'number' && !Number.isFinite(result) ? problem('no_number') : result
}

/** A failure of the chemistry as a problem. Problems travel as JSON, which has no infinities: these go as signs. */
function failed({ failure, quantity, facts }: Failure): Problem {
  if (failure === 'missing') return problem('missing', [], { names: quantity })
  const told: Record<string, Fact> = {}
  for (const [name, fact] of Object.entries(facts)) told[name] = infinite(fact) ? (fact > 0 ? '∞' : '−∞') : fact
  return problem(failure, [], { ...told, quantity })
}

function infinite(fact: Fact): fact is number {
  return typeof fact === 'number' && Math.abs(fact) === Number.POSITIVE_INFINITY
}
