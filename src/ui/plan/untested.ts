import { isForetold } from '../../notebook/foretold'
import { staleDays } from '../../record/staleDays'
import type { Fact } from '../../words/problem'
import type { Book } from '../shell/book'
import { testedOn } from './testedOn'

/** Why a water has to be tested before anyone says that people may swim in it: a key of the words, and its facts. */
export interface Untested {
  readonly key: 'plan.swim.why_stale' | 'plan.swim.why_foretold'
  readonly facts: Readonly<Record<string, Fact>>
}

/** Null for a water that was tested lately, or whose test has no date. Tracked. */
export function untested(book: Book, scenario: string, at: Date): Untested | null {
  if (isForetold(book.scenario(scenario))) return { key: 'plan.swim.why_foretold', facts: {} }
  const days = staleDays(testedOn(book, scenario), at)
  return days === null ? null : { key: 'plan.swim.why_stale', facts: { days } }
}
