import { chlorineWanted } from './chlorineWanted'
import { retest } from './dose'
import { type Draft, numberOf, say, verdict } from './draft'
import { judge } from './judge'
import { doubtfullyOver } from './limits'
import { saltTarget } from './salt'

/** Where the error of a test alone could turn what the plan says of a reading, that test comes first, again. */
export function testAgain(draft: Draft): void {
  const targets: readonly (readonly [quantity: string, target: number | undefined])[] = [
    ['ph', numberOf(draft, 'target_ph')],
    ['total_alkalinity', numberOf(draft, 'target_total_alkalinity')],
    ['free_chlorine', chlorineWanted(draft)],
    ['calcium_hardness', numberOf(draft, 'target_calcium_hardness')],
    ['cyanuric_acid', numberOf(draft, 'target_cyanuric_acid')],
    ['salt', saltTarget(draft)],
  ]
  const near = targets
    .filter(([quantity, target]) => judge(draft, quantity, target) === 'doubtful')
    .map(([name]) => name)
  const doubtful = [...new Set([...near, ...doubtfullyOver(draft)])]
  if (doubtful.length === 0) return
  for (const quantity of doubtful) {
    const reading = numberOf(draft, quantity) ?? 0
    verdict(draft, quantity, 'test_again', say('plan.verdict.test_error', { quantity, reading }))
  }
  draft.complete = false
  retest(draft, doubtful, 'plan.retest.test_error', ['test_again'])
}
