import { problem } from '../words/problem'
import { wait } from './clock'
import { choiceOf, type Draft, numberOf, rule, say, unmet, usable, verdict } from './draft'
import { judge, nothingToAdd, unreadable } from './judge'
import { firstPart, secondPart, type TwoParts } from './twoParts'

/** Stabilizer is started; the rest of it comes after a week. Answers what is still to come, and when. */
export function startStabilizer(draft: Draft): (() => void) | undefined {
  const target = numberOf(draft, 'target_cyanuric_acid')
  if (draft.refused.has('stabilizer')) return undefined
  if (usable(draft, 'cyanuric_acid') === undefined) {
    if (target !== undefined) unreadable(draft, 'cyanuric_acid')
    return undefined
  }
  const call = judge(draft, 'cyanuric_acid', target)
  nothingToAdd(draft, 'cyanuric_acid', target, call)
  if (call === 'high' && target !== undefined) {
    verdict(draft, 'cyanuric_acid', 'do_not_buy', say('plan.verdict.stabilizer_high', { target }))
  }
  if (target === undefined || call !== 'low') return undefined
  if (choiceOf(draft, 'water_body') === 'spa') {
    verdict(draft, 'cyanuric_acid', 'do_not_buy', say('plan.verdict.no_stabilizer_spa'))
    unmet(draft, 'cyanuric_acid', problem('plan_no_stabilizer_spa'))
    return undefined
  }
  const hours = rule(draft, 'stabilizer', 'wait_hours') ?? 0
  const since = numberOf(draft, 'stabilizer_days')
  if (since !== undefined && since * DAY < hours) {
    verdict(
      draft,
      'cyanuric_acid',
      'test_again',
      say('plan.verdict.still_dissolving', { days: Math.ceil(hours / DAY - since) }),
    )
    unmet(draft, 'cyanuric_acid', problem('plan_still_dissolving'))
    draft.complete = false
    return undefined
  }
  verdict(draft, 'cyanuric_acid', 'step', say('plan.verdict.low', { quantity: 'cyanuric_acid', target }))
  const spec: TwoParts = {
    role: 'stabilizer',
    quantity: 'cyanuric_acid',
    targets: { target_cyanuric_acid: target },
    rule: 'stabilizer',
    wait: 0,
    options: { rules: ['stabilizer'] },
  }
  const started = draft.hour
  if (!firstPart(draft, spec)) return undefined
  const settles = () => {
    const due = started + hours
    if (due > draft.hour) wait(draft, due - draft.hour, 'plan.step.stabilizer_dissolves', ['stabilizer'])
  }
  return () => {
    settles()
    secondPart(draft, { ...spec, wait: hours }, 'plan.retest.stabilizer_second')
  }
}

const DAY = 24
