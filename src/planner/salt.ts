import { problem } from '../words/problem'
import { type Draft, numberOf, rule, say, unmet, usable, verdict } from './draft'
import { judge, nothingToAdd, unreadable } from './judge'
import { firstPart, secondPart, type TwoParts } from './twoParts'

/** The salt that is wanted: the target, else the middle of the cell's window. */
export function saltTarget(draft: Draft): number | undefined {
  return numberOf(draft, 'target_salt') ?? numberOf(draft, 'target_salt_used')
}

/** Whether salt is to go in. Called before anything else is dosed, so that the rest aims at the final salt. */
export function saltWanted(draft: Draft): number | undefined {
  const target = saltTarget(draft)
  if (target === undefined) return undefined
  if (usable(draft, 'salt') === undefined) {
    unreadable(draft, 'salt')
    return undefined
  }
  const call = judge(draft, 'salt', target)
  nothingToAdd(draft, 'salt', target, call)
  if (call === 'high') verdict(draft, 'salt', 'do_not_buy', say('plan.verdict.salt_high', { target }))
  if (call !== 'low') return undefined
  const id = draft.refused.get('salt')
  if (id !== undefined) {
    verdict(draft, 'salt', 'left_out', say('plan.verdict.kept_out', { quantity: 'salt', rule: id }))
    unmet(draft, 'salt', problem('plan_kept_out', [], { rule: id }))
    return undefined
  }
  verdict(draft, 'salt', 'step', say('plan.verdict.low', { quantity: 'salt', target }))
  return target
}

/** Salt: cell off, whole bags first, brushed, a day, read by a second method, then the rest. */
export function addSalt(draft: Draft, target: number): void {
  const spec: TwoParts = {
    role: 'salt',
    quantity: 'salt',
    targets: { target_salt: target },
    rule: 'salt',
    wait: rule(draft, 'salt', 'wait_hours') ?? 0,
    wholePacks: rule(draft, 'salt', 'share') !== undefined,
    options: { rules: ['salt', 'final_salt'], cell: 'off' },
  }
  if (!firstPart(draft, spec)) return
  secondPart(draft, spec, 'plan.retest.salt_second')
  draft.secondSaltReading = true
  draft.finalSalt = undefined
}
