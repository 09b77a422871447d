import { isProblem, problem } from '../words/problem'
import { largest } from './base'
import { isFreshPlaster } from './cautions'
import { choose } from './choose'
import { wait } from './clock'
import { choiceOf, type Draft, numberOf, rule, say, unmet, usable, verdict } from './draft'
import { judge, leftOut, nothingToAdd, unreadable } from './judge'
import { firstPart, secondPart, type TwoParts } from './twoParts'

/** Walls that have no calcium to lose. */
const NO_CALCIUM = new Set(['vinyl', 'painted'])

/** Calcium, the day after bicarbonate or soda ash, and no further than the index allows with the final salt. */
export function addCalcium(draft: Draft): void {
  if (draft.refused.has('calcium')) return
  const wanted = numberOf(draft, 'target_calcium_hardness')
  if (usable(draft, 'calcium_hardness') === undefined) {
    if (wanted !== undefined) unreadable(draft, 'calcium_hardness')
    return
  }
  const call = judge(draft, 'calcium_hardness', wanted)
  if (wanted === undefined && call === 'well' && NO_CALCIUM.has(choiceOf(draft, 'shell') ?? '')) {
    verdict(draft, 'calcium_hardness', 'do_not_buy', say('plan.verdict.no_calcium_wall'))
  }
  nothingToAdd(draft, 'calcium_hardness', wanted, call)
  if (wanted === undefined || call === 'well' || call === 'doubtful') return
  if (call === 'high') {
    verdict(draft, 'calcium_hardness', 'do_not_buy', say('plan.verdict.calcium_high', { target: wanted }))
    return
  }
  if (isFreshPlaster(draft)) {
    // what the plaster gives off will not come out again
    verdict(draft, 'calcium_hardness', 'do_not_buy', say('plan.verdict.calcium_from_plaster'))
    unmet(draft, 'calcium_hardness', problem('plan_kept_out', [], { rule: 'fresh_plaster' }))
    return
  }
  if (draft.unusable.has('ph') || draft.unusable.has('total_alkalinity')) {
    unreadable(draft, draft.unusable.has('ph') ? 'ph' : 'total_alkalinity')
    verdict(
      draft,
      'calcium_hardness',
      'left_out',
      say('plan.verdict.rests_on', { quantity: 'calcium_hardness', names: ['ph', 'total_alkalinity'] }),
    )
    return
  }
  const target = clearTarget(draft, wanted)
  if (target === undefined) return
  verdict(draft, 'calcium_hardness', 'step', say('plan.verdict.low', { quantity: 'calcium_hardness', target }))
  apart(draft)
  const a_day = rule(draft, 'calcium', 'a_day')
  const spec: TwoParts = {
    role: 'calcium',
    quantity: 'calcium_hardness',
    targets: { target_calcium_hardness: target },
    rule: 'low_volume',
    wait: DAY,
    ...(a_day === undefined ? {} : { mostAtOnce: a_day }),
    clear: (chosen, amount) => largest(draft, chosen, amount, { lsi: rule(draft, 'calcium', 'lsi_most') }),
    options: { rules: ['calcium', 'carbonate_and_calcium', 'final_salt'] },
  }
  if (firstPart(draft, spec)) secondPart(draft, spec, 'plan.retest.calcium_second')
}

const DAY = 24

/** The calcium that the index leaves room for; undefined, and said, where that is none. */
function clearTarget(draft: Draft, wanted: number): number | undefined {
  const most = rule(draft, 'calcium', 'lsi_most')
  const chosen = choose(draft, 'calcium', { target_calcium_hardness: wanted })
  if (isProblem(chosen)) {
    leftOut(draft, 'calcium_hardness', chosen)
    unmet(draft, 'calcium_hardness', chosen)
    return undefined
  }
  const amount = largest(draft, chosen, chosen.need, { lsi: most })
  if (amount >= chosen.need * (1 - 1e-9)) return wanted
  const now = numberOf(draft, 'calcium_hardness') ?? 0
  const reached = now + ((wanted - now) * amount) / chosen.need
  const why = problem('plan_index_first', [], { lsi: most ?? 0, wanted, reached })
  unmet(draft, 'calcium_hardness', why)
  if (judge(draft, 'calcium_hardness', reached) !== 'low') {
    leftOut(draft, 'calcium_hardness', why)
    return undefined
  }
  return reached
}

/** Carbonate and calcium never meet undissolved. */
function apart(draft: Draft): void {
  const hours = rule(draft, 'carbonate_and_calcium', 'wait_hours')
  if (hours === undefined || draft.carbonateAt === undefined) return
  const due = draft.carbonateAt + hours
  if (due > draft.hour) wait(draft, due - draft.hour, 'plan.step.carbonate_settles', ['carbonate_and_calcium'])
}
