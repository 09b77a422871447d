import { isProblem, problem } from '../words/problem'
import { chlorineWanted, mostChlorine } from './chlorineWanted'
import { type Chosen, choose } from './choose'
import { mixing } from './clock'
import { dose } from './dose'
import { bandOf, type Draft, holds, numberOf, rule, say, testError, unmet, usable, verdict } from './draft'
import { judge, leftOut, nothingToAdd, unreadable } from './judge'
import { keptOut } from './keptOut'

const MOST_STEPS = 20

/** Free chlorine up to what is wanted, today; in small steps where there is metal in the water. */
export function raiseChlorine(draft: Draft): void {
  const wanted = chlorineWanted(draft)
  if (wanted === undefined || draft.refused.has('chlorine')) return
  if (usable(draft, 'free_chlorine') === undefined) {
    if (numberOf(draft, 'target_free_chlorine') !== undefined || draft.column.has('target_hocl'))
      unreadable(draft, 'free_chlorine')
    return
  }
  const call = judge(draft, 'free_chlorine', wanted)
  nothingToAdd(draft, 'free_chlorine', wanted, call)
  aboveRatio(draft, wanted)
  if (call !== 'low') return
  // what was read may have been enough: new water and waits take some of it
  const read = judge(draft, 'free_chlorine', wanted, Number(draft.taken.get('free_chlorine')))
  const key = read === 'low' ? 'plan.verdict.low' : 'plan.verdict.runs_short'
  verdict(draft, 'free_chlorine', 'step', say(key, { quantity: 'free_chlorine', target: wanted }))
  addChlorine(draft, wanted, [])
}

/** The dose or doses that take free chlorine to `wanted`. */
export function addChlorine(draft: Draft, wanted: number, rules: readonly string[], key?: string): void {
  const small = draft.metals ? rule(draft, 'metals', 'chlorine_step') : undefined
  const large = rule(draft, 'large_chlorine', 'rise')
  for (let step = 0; step < MOST_STEPS; step++) {
    const now = numberOf(draft, 'free_chlorine')
    if (now === undefined || now >= wanted - testError(draft, 'free_chlorine') / 5) return
    const goal = small === undefined ? wanted : Math.min(wanted, now + small)
    const chosen = choose(draft, 'chlorine', { target_free_chlorine: goal })
    if (isProblem(chosen)) {
      leftOut(draft, 'free_chlorine', chosen)
      unmet(draft, 'free_chlorine', chosen)
      return
    }
    const id = keptOut(draft, chosen, chosen.need)
    if (id !== undefined) {
      const kept = problem('plan_kept_out', [], { rule: id })
      leftOut(draft, 'free_chlorine', kept)
      unmet(draft, 'free_chlorine', kept)
      return
    }
    const isLarge = large !== undefined && goal - now > large
    const least = bandOf(draft, 'free_chlorine')?.low ?? 0
    const done = dose(draft, chosen, Math.max(chosen.need, leastDose(draft, chosen, goal, now)), {
      wait: Math.max(
        mixing(draft, true),
        holds(draft, 'acid_and_chlorine') ? (rule(draft, 'acid_and_chlorine', 'wait_hours') ?? 0) : 0,
      ),
      rules: [
        ...rules,
        'order',
        'acid_and_chlorine',
        'chlorines_apart',
        ...(small === undefined ? [] : ['metals']),
        ...(isLarge ? ['large_chlorine'] : []),
      ],
      how: [...(key ? [say(key)] : []), ...(small !== undefined && now < least ? [say('plan.how.closed')] : [])],
      cautions: isLarge ? [say('plan.caution.large_chlorine')] : [],
      retest: ['free_chlorine'],
    })
    if (done) draft.sinceChlorine = 0
    if (!done || goal === wanted) return
  }
}

/** The least that can be measured, where that does not take chlorine too high. */
function leastDose(draft: Draft, chosen: Chosen, goal: number, now: number): number {
  const step = draft.rules.measurable[chosen.unit][0]?.[1] ?? 0
  return chosen.need > 0 && now + ((goal - now) * step) / chosen.need <= mostChlorine(draft) ? step : 0
}

/** The wanted chlorine against the stabilizer: said where it is over the aim. */
function aboveRatio(draft: Draft, wanted: number): void {
  const aim = rule(draft, 'stabilizer_ratio', 'aim')
  const stabilizer = usable(draft, 'cyanuric_acid')
  if (aim === undefined || stabilizer === undefined || wanted <= 0 || stabilizer / wanted <= aim) return
  verdict(draft, 'cya_to_fc_ratio', 'left_out', say('plan.verdict.over_ratio', { ratio: stabilizer / wanted, aim }))
}

/** Chlorine over what is wanted falls by itself; the plan lets it. */
export function fallTo(draft: Draft): number | undefined {
  const wanted = chlorineWanted(draft)
  const free = usable(draft, 'free_chlorine')
  if (wanted === undefined || free === undefined || judge(draft, 'free_chlorine', wanted) !== 'high') return undefined
  return wanted
}
