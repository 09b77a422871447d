import { isProblem } from '../words/problem'
import { acidDown, phFloor } from './acid'
import { largest } from './base'
import { choose } from './choose'
import { mixing } from './clock'
import { dose, retest } from './dose'
import { type Draft, holds, numberOf, rule, say, unmet, usable, verdict } from './draft'
import { firstShare, judge, leftOut, nothingToAdd, unreadable, volumeShare } from './judge'

const MOST_CYCLES = 12

/** Borate before alkalinity and pH, which it moves: borax with acid in turn, so that the water stays clear. */
export function addBorate(draft: Draft): void {
  const target = numberOf(draft, 'target_borate')
  if (target === undefined || draft.refused.has('borate')) return
  if (usable(draft, 'borate') === undefined) {
    unreadable(draft, 'borate')
    return
  }
  const call = judge(draft, 'borate', target)
  nothingToAdd(draft, 'borate', target, call)
  if (call !== 'low') return
  verdict(draft, 'borate', 'step', say('plan.verdict.low', { quantity: 'borate', target }))
  const now = numberOf(draft, 'borate') ?? 0
  const first = now + (target - now) * firstShare(draft, 'low_volume') * volumeShare(draft)
  if (!boratePart(draft, first, first < target ? 1 : undefined) || first >= target) return
  retest(draft, ['borate'], 'plan.retest.borate_second', ['low_volume'])
  boratePart(draft, target, 2)
}

function boratePart(draft: Draft, target: number, part: 1 | 2 | undefined): boolean {
  const most = rule(draft, 'base_cap', 'ph_most')
  let some = false
  for (let cycle = 0; cycle < MOST_CYCLES; cycle++) {
    const chosen = choose(draft, 'borate', {
      target_borate: target,
      target_ph: undefined,
      target_total_alkalinity: undefined,
    })
    if (isProblem(chosen)) {
      leftOut(draft, 'borate', chosen)
      unmet(draft, 'borate', chosen)
      return false
    }
    const amount = largest(draft, chosen, chosen.need, { ph: most })
    const done = dose(draft, chosen, amount, {
      wait: mixing(draft, false),
      needs: ['ph'],
      rules: ['low_volume', 'base_cap'],
      retest: ['borate', 'ph'],
      ...(part === undefined ? {} : { part }),
    })
    some ||= done
    if (amount >= chosen.need) return some
    const acid = acidDown(draft, { ph: phFloor(draft) }, phFloor(draft), [])
    if (isProblem(acid)) {
      leftOut(draft, 'borate', acid)
      unmet(draft, 'borate', acid)
      return some
    }
    if (!done && cycle > 0 && !holds(draft, 'base_cap')) return some
  }
  return some
}
