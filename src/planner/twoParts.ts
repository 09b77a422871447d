import { isProblem } from '../words/problem'
import { type Chosen, choose } from './choose'
import { type DoseOptions, dose, retest } from './dose'
import { type Draft, holds, numberOf } from './draft'
import { firstShare, leftOut, type Targets, volumeShare } from './judge'
import type { Role } from './shelf'

export interface TwoParts {
  readonly role: Role
  readonly quantity: string
  /** set in the column that asks for the need */
  readonly targets: Targets
  /** the rule whose share holds for the first part; the rule of the low volume where it has none */
  readonly rule: string
  readonly wait: number
  readonly options: Pick<DoseOptions, 'rules' | 'how' | 'cautions' | 'cell'>
  /** the most that goes in at once, as a rise of the quantity */
  readonly mostAtOnce?: number
  /** how much of an amount the water still takes as it stands then */
  readonly clear?: (chosen: Chosen, amount: number) => number
  /** what the water needs after each dose before it takes the next; the doses are then as many as `clear` asks for */
  readonly settles?: () => void
  /** whole packs first, where the size of a pack is known */
  readonly wholePacks?: boolean
}

/**
 * The first part of what cannot be taken out again: a share of the need, for the least volume that the pool may have. Answers
 * false where nothing could be dosed.
 */
export function firstPart(draft: Draft, spec: TwoParts): boolean {
  const chosen = choose(draft, spec.role, spec.targets)
  if (isProblem(chosen)) {
    leftOut(draft, spec.quantity, chosen)
    return false
  }
  const share = firstShare(draft, spec.rule)
  const wanted = chosen.need * share * volumeShare(draft)
  const { pack } = chosen.item
  const packs = spec.wholePacks && pack !== undefined && wanted >= pack
  const first = packs ? Math.floor(wanted / pack) * pack : wanted
  return inDays(draft, spec, first, chosen.need, share < 1 || volumeShare(draft) < 1 ? 1 : undefined)
}

/** The rest by the new reading, at most what is foretold now. Answers whether any went in. */
export function secondPart(draft: Draft, spec: TwoParts, key: string): boolean {
  if (firstShare(draft, spec.rule) >= 1 && volumeShare(draft) >= 1) return false
  const chosen = choose(draft, spec.role, spec.targets)
  if (isProblem(chosen)) return false
  retest(draft, [spec.quantity], key, [spec.rule, 'low_volume'])
  draft.measured = draft.column
  return inDays(draft, spec, chosen.need, chosen.need, 2)
}

/** An amount in as many doses as the most at once asks for, each a wait apart. */
function inDays(draft: Draft, spec: TwoParts, amount: number, need: number, part: 1 | 2 | undefined): boolean {
  if (spec.settles) return asItTakes(draft, spec, amount, part, spec.settles)
  const now = numberOf(draft, spec.quantity) ?? 0
  const target = Number(spec.targets[`target_${spec.quantity}`] ?? numberOf(draft, `target_${spec.quantity}`) ?? now)
  const rise = need > 0 ? ((target - now) * amount) / need : 0
  const doses = spec.mostAtOnce === undefined ? 1 : Math.max(1, Math.ceil(rise / spec.mostAtOnce - 1e-9))
  let done = false
  for (let i = 0; i < doses; i++) {
    const chosen = choose(draft, spec.role, spec.targets)
    if (isProblem(chosen)) break
    const once = Math.min(amount / doses, chosen.need)
    done = doseOf(draft, spec, chosen, spec.clear?.(chosen, once) ?? once, part) || done
  }
  return done
}

const MOST_DOSES = 12

/** An amount in equal doses, each no more than the water takes as it then stands. */
function asItTakes(
  draft: Draft,
  spec: TwoParts,
  amount: number,
  part: 1 | 2 | undefined,
  settles: () => void,
): boolean {
  let left = amount
  let done = false
  for (let i = 0; i < MOST_DOSES; i++) {
    const chosen = choose(draft, spec.role, spec.targets)
    if (isProblem(chosen)) break
    left = Math.min(left, chosen.need)
    const takes = spec.clear?.(chosen, left) ?? left
    if (takes <= 0) break
    const once = left / Math.ceil(left / takes - 1e-9)
    if (!doseOf(draft, spec, chosen, once, part)) break
    done = true
    left -= once
    settles()
    if (left <= amount * 1e-6) break
  }
  return done
}

function doseOf(draft: Draft, spec: TwoParts, chosen: Chosen, amount: number, part: 1 | 2 | undefined): boolean {
  return dose(draft, chosen, amount, {
    ...spec.options,
    ...(part === undefined ? {} : { part }),
    wait: spec.wait,
    retest: [spec.quantity],
    rules: [...spec.options.rules, ...(holds(draft, 'low_volume') ? ['low_volume'] : [])],
  })
}
