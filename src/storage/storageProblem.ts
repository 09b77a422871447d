import { type Problem, problem } from '../words/problem'

/** What the browser threw, as a problem of ours. DOMException names are those of the Indexed Database API 3.0. */
export function storageProblem(error: unknown): Problem {
  const name = error instanceof Error || error instanceof DOMException ? error.name : ''
  if (name === 'QuotaExceededError') return problem('storage_full')
  if (name === 'VersionError') return problem('storage_newer')
  // a connection that the browser or another version of the page has closed
  if (name === 'InvalidStateError' || name === 'AbortError') return problem('storage_lost')
  if (name === 'SecurityError' || name === 'NotAllowedError') return problem('storage_blocked')
  return problem('storage_failed', [], { why: error instanceof Error ? error.message : String(error) })
}
