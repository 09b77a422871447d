import { type Problem, problem } from '../../words/problem'
import { sentence } from '../../words/say'

/** What is wrong with one record of a backup; records are counted from 1. */
export interface Fault {
  readonly at: number
  readonly why: Problem
}

/**
 * A fault as a problem that says its place, in the reader's language.
 * @param name the file's
 */
export function faultProblem({ at, why }: Fault, name: string): Problem {
  if (why.code.startsWith('backup_')) return { ...why, facts: { ...why.facts, record: at } }
  return problem('backup_record_refused', [name], { record: at, why: sentence(why) })
}
