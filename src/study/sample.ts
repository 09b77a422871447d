import { type Problem, problem } from '../words/problem'
import { type Answer, numberIn } from './evaluate'

/** One value of the input that was tried; `off` is how far the output is from what is wanted, null where there is no answer. */
export interface Sample {
  readonly x: number
  readonly off: number | null
  readonly why: Problem | null
}

export function sampleOf(x: number, answer: Answer | undefined, wanted: number): Sample {
  const value = numberIn(answer)
  if (value !== null) return { x, off: value - wanted, why: null }
  return { x, off: null, why: answer && 'problem' in answer ? answer.problem : problem('no_number') }
}

export function isNear({ off }: Sample, tolerance: number): boolean {
  return off !== null && Math.abs(off) <= tolerance
}
