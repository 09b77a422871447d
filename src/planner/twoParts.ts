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

/** The rest by the new reading, at most what is foretold now. */
export function secondPart(draft: Draft, spec: TwoParts, key: string): void {
  if (firstShare(draft, spec.rule) >= 1 && volumeShare(draft) >= 1) return
  const chosen = choose(draft, spec.role, spec.targets)
  if (isProblem(chosen)) return
  retest(draft, [spec.quantity], key, [spec.rule, 'low_volume'])
  draft.measured = draft.column
  inDays(draft, spec, chosen.need, chosen.need, 2)
}

/** An amount in as many doses as the most at once asks for, each a wait apart. */
function inDays(draft: Draft, spec: TwoParts, amount: number, need: number, part: 1 | 2 | undefined): boolean {
  const now = numberOf(draft, spec.quantity) ?? 0
  const target = Number(spec.targets[`target_${spec.quantity}`] ?? numberOf(draft, `target_${spec.quantity}`) ?? now)
  const rise = need > 0 ? ((target - now) * amount) / need : 0
  const doses = spec.mostAtOnce === undefined ? 1 : Math.max(1, Math.ceil(rise / spec.mostAtOnce - 1e-9))
  let done = false
  for (let i = 0; i < doses; i++) {
    const chosen = choose(draft, spec.role, spec.targets)
    if (isProblem(chosen)) break
    const once = Math.min(amount / doses, chosen.need)
    done =
      dose(draft, chosen, spec.clear?.(chosen, once) ?? once, {
        ...spec.options,
        ...(part === undefined ? {} : { part }),
        wait: spec.wait,
        retest: [spec.quantity],
        rules: [...spec.options.rules, ...(holds(draft, 'low_volume') ? ['low_volume'] : [])],
      }) || done
  }
  return done
}
