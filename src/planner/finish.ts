import { problem } from '../words/problem'
import { lsiNow } from './amounts'
import { addChlorine, fallTo } from './chlorine'
import { chlorineWanted } from './chlorineWanted'
import { wait } from './clock'
import { retest } from './dose'
import { type Draft, holds, moveTo, numberOf, say, testError, unmet, usable, verdict } from './draft'
import { judge } from './judge'
import { risenOver } from './limits'
import { saltTarget } from './salt'
import type { Plan, Swim } from './step'
import { swimAfter } from './swim'

/** Chlorine as it is wanted at the time of the last step. */
export function lastChlorine(draft: Draft): void {
  if (draft.noChlorine) return
  const wanted = chlorineWanted(draft)
  const free = usable(draft, 'free_chlorine')
  if (wanted === undefined || free === undefined) return
  const high = fallTo(draft)
  if (high !== undefined) fall(draft, free, high)
  else if (free < wanted && judge(draft, 'free_chlorine', wanted) !== 'well')
    addChlorine(draft, wanted, ['daily_chlorine'])
}

/** Lets chlorine that is over its target be used up; where the demand is not known, a test says when it has been. */
function fall(draft: Draft, free: number, wanted: number): void {
  const demand = numberOf(draft, 'chlorine_demand')
  if (demand === undefined || demand <= 0) {
    verdict(draft, 'free_chlorine', 'test_again', say('plan.verdict.falls', { target: wanted }))
    unmet(draft, 'free_chlorine', problem('plan_falls', [], { free, wanted }))
    draft.complete = false
    retest(draft, ['free_chlorine'], 'plan.retest.chlorine_falls', ['swim_again'])
    return
  }
  const before = draft.cellRuns
  draft.cellRuns = true
  const hours = Math.ceil(((free - wanted) / demand) * 24)
  wait(draft, hours, 'plan.step.let_fall', ['swim_again'], () => {
    const combined = numberOf(draft, 'combined_chlorine')
    moveTo(draft, {
      free_chlorine: wanted,
      ...(combined === undefined ? {} : { total_chlorine: wanted + combined }),
    })
  })
  draft.cellRuns = before
}

/** The last test: what the steps have changed. */
export function lastTest(draft: Draft): void {
  const readings = new Set(
    draft.steps.flatMap((step) => (step.kind === 'dose' || step.kind === 'dilute' ? step.retest : [])),
  )
  // where none may go in, the gate has said what to test, and when
  if (draft.chlorineLost && !draft.noChlorine) {
    readings.add('free_chlorine')
    verdict(draft, 'free_chlorine', 'test_again', say('plan.verdict.chlorine_lost', { names: ['chlorine_demand'] }))
    if (holds(draft, 'daily_chlorine')) retest(draft, ['free_chlorine'], 'plan.retest.each_day', ['daily_chlorine'])
  }
  if (readings.size > 0) retest(draft, [...readings], 'plan.retest.last', ['swim_again'])
}

/** The plan as it is given: what the end leaves unmet is named with its reason. */
export function finished(draft: Draft, swim: Swim): Plan {
  for (const [quantity, target] of targetsOf(draft)) {
    const end = numberOf(draft, quantity)
    if (end !== undefined && Math.abs(end - target) <= testError(draft, quantity)) continue
    // a least that is passed within the range is met
    if (quantity === 'calcium_hardness' && judge(draft, quantity, target) === 'well') continue
    if (quantity === 'free_chlorine' && end !== undefined && end > target) {
      unmet(draft, quantity, problem('plan_least_first', [], { target, end }))
    }
    unmet(draft, quantity, problem('plan_not_met', [], { quantity, target, ...(end === undefined ? {} : { end }) }))
  }
  for (const quantity of draft.steps.length > 0 ? risenOver(draft) : []) {
    unmet(draft, quantity, problem('plan_risen_over', [], { quantity, end: numberOf(draft, quantity) ?? 0 }))
    draft.complete = false
  }
  if (draft.column.has('phosphate') && holds(draft, 'phosphate')) {
    verdict(draft, 'phosphate', 'do_not_buy', say('plan.verdict.phosphate'))
  }
  const costs = draft.steps.filter((step) => step.kind === 'dose').map((step) => step.cost?.cost)
  const known = costs.filter((cost) => cost !== undefined)
  return {
    steps: draft.steps,
    verdicts: draft.verdicts,
    unmet: draft.unmet,
    end: draft.column,
    ...lsiNow(draft),
    complete: draft.complete,
    swim: again(draft, swim),
    cases: draft.cases,
    ...(known.length > 0 && known.length === costs.length ? { cost: known.reduce((sum, cost) => sum + cost, 0) } : {}),
  }
}

/** When people may swim again, where a rule says what that asks for. */
function again(draft: Draft, swim: Swim): Swim {
  const closed = swim.reasons.some(({ key }) => key === 'plan.swim.case')
  if (swim.now === 'yes' || closed || !holds(draft, 'swim_again')) return swim
  const after = swimAfter(draft)
  return after === undefined ? swim : { ...swim, after }
}

function targetsOf(draft: Draft): readonly (readonly [quantity: string, target: number])[] {
  const wanted: readonly (readonly [string, number | undefined])[] = [
    ['ph', numberOf(draft, 'target_ph')],
    ['total_alkalinity', numberOf(draft, 'target_total_alkalinity')],
    ['free_chlorine', numberOf(draft, 'target_free_chlorine')],
    ['calcium_hardness', numberOf(draft, 'target_calcium_hardness')],
    ['cyanuric_acid', numberOf(draft, 'target_cyanuric_acid')],
    ['borate', numberOf(draft, 'target_borate')],
    ['salt', saltTarget(draft)],
  ]
  return wanted.flatMap(([quantity, target]) => (target === undefined ? [] : [[quantity, target] as const]))
}
