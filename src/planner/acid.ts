import { isProblem, type Problem } from '../words/problem'
import { type Chosen, choose } from './choose'
import { mixing } from './clock'
import { dose } from './dose'
import { type Draft, holds, numberIn, numberOf, rule } from './draft'
import { finalWater } from './finalWater'
import { volumeShare } from './judge'

export interface BalanceTargets {
  readonly ph?: number | undefined
  readonly ta?: number | undefined
}

/** What is asked of the pH and alkalinity worksheet: these targets alone, of the water with all of its salt in. */
export function balanceTargets(draft: Draft, targets: BalanceTargets) {
  return { ...only(targets), ...finalWater(draft) }
}

function only({ ph, ta }: BalanceTargets) {
  return { target_ph: ph, target_total_alkalinity: ta, target_borate: undefined }
}

/**
 * Acid toward a target, in equal doses: each at most the code's cap, all together never under `floor`, also where the pool holds
 * the least that it may. Answers whether the whole need went in.
 */
export function acidDown(
  draft: Draft,
  targets: BalanceTargets,
  floor: number,
  rules: readonly string[],
): boolean | Problem {
  const chosen = choose(draft, 'acid', balanceTargets(draft, targets))
  if (isProblem(chosen)) return chosen
  if (chosen.need <= 0) return true
  const bottom = choose(draft, 'acid', only({ ph: floor }))
  const room = (isProblem(bottom) ? 0 : bottom.need) * volumeShare(draft)
  const amount = Math.min(chosen.need, room)
  const doses = Math.max(1, Math.ceil(amount / capOf(draft, chosen) - 1e-9))
  for (let i = 0; i < doses; i++) {
    const last = i === doses - 1
    const between = rule(draft, 'acid_cap', 'hours_between') ?? 0
    dose(draft, chosen, amount / doses, {
      needs: ['ph', 'total_alkalinity'],
      wait: Math.max(mixing(draft, true), apart(draft), last ? 0 : between),
      rules: [...rules, 'acid_cap', 'acid_place', 'acid_and_chlorine'],
      ...(holds(draft, 'acid_place') ? { cell: 'pause' as const } : {}),
      retest: last ? ['ph', 'total_alkalinity'] : ['ph'],
    })
  }
  return chosen.need <= room
}

/** The most of a product at a time, by the equivalents of acid in it. */
function capOf(draft: Draft, chosen: Chosen): number {
  const cap = rule(draft, 'acid_cap', 'mol_per_m3')
  const equivalents = numberIn(chosen.answers, 'acid_equivalents')
  const volume = numberOf(draft, 'volume')
  if (cap === undefined || equivalents === undefined || volume === undefined || equivalents <= 0)
    return Number.POSITIVE_INFINITY
  return (cap * volume * chosen.need) / equivalents
}

/** Acid and chlorine stand an hour apart. */
function apart(draft: Draft): number {
  return Math.max(rule(draft, 'acid_place', 'wait_hours') ?? 0, rule(draft, 'acid_and_chlorine', 'wait_hours') ?? 0)
}

/** The least pH that acid may lead to. */
export function phFloor(draft: Draft): number {
  return rule(draft, 'acid_cap', 'ph_least') ?? LEAST_PH
}

/** Where no rule holds: the least that the worksheet takes as a target. */
const LEAST_PH = 6
