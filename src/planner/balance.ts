import { isProblem, type Problem } from '../words/problem'
import { acidDown, type BalanceTargets, balanceTargets, phFloor } from './acid'
import { aerate } from './aerate'
import { baseUp, carbonateDose } from './base'
import { choose } from './choose'
import {
  bandOf,
  type Draft,
  holds,
  numberIn,
  numberOf,
  rule,
  say,
  testError,
  truthIn,
  unmet,
  usable,
  verdict,
} from './draft'
import { finalWater } from './finalWater'
import { type Call, judge, leftOut, nothingToAdd, unreadable } from './judge'

/** Alkalinity and pH may have to be looked at again once the other has moved. */
const PASSES = 3
const MOST_CYCLES = 20

/** Alkalinity first, then pH. */
export function balance(draft: Draft): void {
  if (draft.refused.has('balance')) return
  const ph = numberOf(draft, 'target_ph')
  const ta = numberOf(draft, 'target_total_alkalinity')
  if (!readable(draft, ph, ta)) return
  for (let pass = 0; pass < PASSES; pass++) {
    const calls = callsNow(draft, ph, ta)
    if (pass === 0) {
      for (const [quantity, target, call] of [
        ['total_alkalinity', ta, calls.ta],
        ['ph', ph, calls.ph],
      ] as const) {
        if (call !== 'hardly') nothingToAdd(draft, quantity, target, call)
        else if (target !== undefined)
          verdict(draft, quantity, 'nothing', say('plan.verdict.hardly_low', { quantity, target }))
      }
    }
    const before = draft.steps.length
    const wrong = correct(draft, calls, { ph, ta })
    if (isProblem(wrong)) giveUp(draft, wrong, calls)
    if (draft.steps.length === before) break
  }
}

/** pH and alkalinity as they will be with all of the salt in. */
function callsNow(draft: Draft, ph: number | undefined, ta: number | undefined): Calls {
  const final = finalWater(draft)
  const reading = (name: string) => (typeof final[name] === 'number' ? final[name] : usable(draft, name))
  const call = judge(draft, 'ph', ph, reading('ph'))
  return {
    ta: judge(draft, 'total_alkalinity', ta, reading('total_alkalinity')),
    ph: call === 'low' && ph !== undefined && hardlyLow(draft, ph, reading('ph')) ? 'hardly' : call,
  }
}

/**
 * Whether a pH lies so little under its target that a base would be given for nothing that a test could tell. The same whether it
 * was read or is foretold, so that one water has one answer; never outside the range of the pool.
 */
function hardlyLow(draft: Draft, ph: number, reading: number | undefined): boolean {
  const errors = rule(draft, 'base_cap', 'least_errors') ?? 1
  const least = bandOf(draft, 'ph')?.low
  if (reading === undefined || (least !== undefined && reading < least)) return false
  return reading > ph - errors * testError(draft, 'ph') - 1e-9
}

interface Calls {
  readonly ta: Call
  readonly ph: Call | 'hardly'
}

function correct(draft: Draft, calls: Calls, { ph, ta }: BalanceTargets): Problem | undefined {
  // both are judged as they stand now: what moves the one may bring the other right, which was wrong all the same
  for (const [quantity, target, call] of [
    ['total_alkalinity', ta, calls.ta],
    ['ph', ph, calls.ph],
  ] as const) {
    if (target !== undefined && (call === 'high' || call === 'low'))
      verdict(draft, quantity, 'step', say(`plan.verdict.${call}`, { quantity, target }))
  }
  if (ta !== undefined && calls.ta === 'high') {
    return alkalinityDown(draft, ta, ph)
  }
  if (ta !== undefined && calls.ta === 'low') {
    return alkalinityUp(draft, ta, ph)
  }
  if (ph === undefined || (calls.ph !== 'high' && calls.ph !== 'low')) return undefined
  return calls.ph === 'high' ? phDown(draft, ph, ta) : phUp(draft, ph, ta)
}

/** Acid while the pH is low enough for carbon dioxide to leave, then air; acid again only when the pH is back. */
function alkalinityDown(draft: Draft, ta: number, ph: number | undefined): Problem | undefined {
  const floor = rule(draft, 'alkalinity_down', 'ph_least') ?? phFloor(draft)
  const again = rule(draft, 'alkalinity_down', 'ph_again') ?? phFloor(draft)
  for (let cycle = 0; cycle < MOST_CYCLES; cycle++) {
    const whole = acidDown(draft, { ta }, floor, ['alkalinity_down'])
    if (isProblem(whole)) return whole
    const reached = (numberOf(draft, 'total_alkalinity') ?? 0) <= ta + testError(draft, 'total_alkalinity') / 2
    if (whole || reached) {
      if (ph !== undefined && (numberOf(draft, 'ph') ?? ph) < ph - testError(draft, 'ph')) aerate(draft, ph)
      return undefined
    }
    if (!aerate(draft, again)) return undefined
  }
  return undefined
}

/** Bicarbonate; with it what the pH needs to come out right together with the alkalinity. */
function alkalinityUp(draft: Draft, ta: number, ph: number | undefined): Problem | undefined {
  const alone = choose(draft, 'bicarbonate', balanceTargets(draft, { ta }))
  if (isProblem(alone)) return alone
  const after = numberIn(alone.answers, 'ph_after')
  if (ph === undefined || after === undefined || near(draft, ph, after)) {
    carbonateDose(draft, alone, alone.need, [])
    return undefined
  }
  const both = choose(draft, 'bicarbonate', balanceTargets(draft, { ph, ta }))
  // without a base that raises pH the whole need is bicarbonate, and the pH comes up by air after it
  if (isProblem(both) || truthIn(both.answers, 'aeration_needed') !== false || (after < ph && noBase(draft))) {
    carbonateDose(draft, alone, alone.need, [])
    return undefined
  }
  carbonateDose(draft, both, both.need, [])
  return after > ph ? wrongOnly(acidDown(draft, { ph }, phFloor(draft), [])) : wrongOnly(baseUp(draft, { ph }))
}

/** A pH that calls for nothing more. */
function near(draft: Draft, ph: number, after: number): boolean {
  return Math.abs(after - ph) <= testError(draft, 'ph') || (after < ph && hardlyLow(draft, ph, after))
}

/** Acid alone, unless it would take the alkalinity under its target: then bicarbonate goes before it. */
function phDown(draft: Draft, ph: number, ta: number | undefined): Problem | undefined {
  const alone = choose(draft, 'acid', balanceTargets(draft, { ph }))
  if (isProblem(alone)) return alone
  const left = numberIn(alone.answers, 'total_alkalinity_after')
  if (ta !== undefined && left !== undefined && left < ta - testError(draft, 'total_alkalinity')) {
    const both = choose(draft, 'bicarbonate', balanceTargets(draft, { ph, ta }))
    if (!isProblem(both) && truthIn(both.answers, 'aeration_needed') === false)
      carbonateDose(draft, both, both.need, [])
  }
  return wrongOnly(acidDown(draft, { ph }, phFloor(draft), []))
}

/** A base where the alkalinity leaves room for it; else air. */
function phUp(draft: Draft, ph: number, ta: number | undefined): Problem | undefined {
  const alone = choose(draft, 'base', balanceTargets(draft, { ph }))
  const after = isProblem(alone) ? undefined : numberIn(alone.answers, 'total_alkalinity_after')
  const room = after !== undefined && (ta === undefined || after <= ta + testError(draft, 'total_alkalinity'))
  if (room || !holds(draft, 'alkalinity_down')) return wrongOnly(baseUp(draft, { ph }))
  aerate(draft, ph)
  return undefined
}

/** What is on hand as a base does not raise pH. */
function noBase(draft: Draft): boolean {
  const base = choose(draft, 'base', {})
  return isProblem(base) && base.code === 'plan_kept_out'
}

function wrongOnly(outcome: boolean | Problem): Problem | undefined {
  return isProblem(outcome) ? outcome : undefined
}

function readable(draft: Draft, ph: number | undefined, ta: number | undefined): boolean {
  const wanted = [...(ph === undefined ? [] : ['ph']), ...(ta === undefined ? [] : ['total_alkalinity'])]
  // each rests on both: no dose for the one is known without the other
  const lacking = ['ph', 'total_alkalinity'].filter(
    (name) => draft.unusable.has(name) || (wanted.length > 0 && numberOf(draft, name) === undefined),
  )
  if (wanted.length > 0) for (const name of lacking) unreadable(draft, name)
  for (const quantity of lacking.length > 0 ? wanted : []) {
    if (lacking.includes(quantity)) continue
    const again = lacking.some((name) => draft.unusable.has(name))
    const key = again ? 'plan.verdict.rests_on' : 'plan.verdict.missing'
    verdict(draft, quantity, 'left_out', say(key, { quantity, names: lacking }))
  }
  return lacking.length === 0
}

function giveUp(draft: Draft, wrong: Problem, calls: Calls): void {
  for (const [quantity, call] of [
    ['total_alkalinity', calls.ta],
    ['ph', calls.ph],
  ] as const) {
    if (call !== 'high' && call !== 'low') continue
    leftOut(draft, quantity, wrong)
    unmet(draft, quantity, wrong)
  }
}
