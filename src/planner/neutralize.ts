import { isProblem } from '../words/problem'
import { choose } from './choose'
import { mixing } from './clock'
import { dose } from './dose'
import { type Draft, rule, say } from './draft'

/**
 * Part of the neutralizer's dose down to `most` mg/L; the test that follows says what it did, for a mass of thiosulfate takes
 * one to eight times its chlorine. Answers false where there is none on hand.
 */
export function neutralize(draft: Draft, most: number): boolean {
  const chosen = choose(draft, 'neutralizer', { target_free_chlorine: most })
  if (isProblem(chosen)) return false
  const share = rule(draft, 'high_chlorine', 'neutralizer_share') ?? 1
  return dose(draft, chosen, chosen.need * share, {
    wait: mixing(draft, true),
    rules: ['high_chlorine'],
    how: [say('plan.how.half')],
    retest: ['free_chlorine'],
  })
}
