import { problem } from '../words/problem'
import { wait } from './clock'
import { choiceOf, type Draft, numberOf, rule, say, unmet, usable, verdict } from './draft'
import { judge, nothingToAdd, unreadable } from './judge'
import { stabilizerAcid } from './stabilizerAcid'
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
  const acid = stabilizerAcid(draft)
  const spec: TwoParts = {
    role: 'stabilizer',
    quantity: 'cyanuric_acid',
    targets: { target_cyanuric_acid: target },
    rule: 'stabilizer',
    wait: 0,
    clear: acid.clear,
    settles: acid.settles,
    options: { rules: ['stabilizer'] },
  }
  if (!firstPart(draft, spec)) {
    unmet(draft, 'cyanuric_acid', problem('plan_ph_first', [], { least: acid.floor }))
    return undefined
  }
  // the last of its doses, from which the week counts
  const dissolves = () => {
    const last = draft.steps.findLast((step) => step.product === 'cyanuric_acid')
    const due = (last?.at ?? 0) + hours
    if (due > draft.hour) wait(draft, due - draft.hour, 'plan.step.stabilizer_dissolves', ['stabilizer'], acid.back)
  }
  return () => {
    dissolves()
    if (secondPart(draft, spec, 'plan.retest.stabilizer_second')) dissolves()
  }
}

const DAY = 24
