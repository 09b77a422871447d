import { amountOf, inputsOf, lsiNow } from './amounts'
import { cautionsFor, placeFor } from './cautions'
import type { Chosen } from './choose'
import { pass, roomToday } from './clock'
import { costNow } from './costNow'
import { type Draft, holding, holds, moveTo, say } from './draft'
import { foretell } from './foretell'
import { onLabel } from './onLabel'
import type { Amount, Say } from './step'

export interface DoseOptions {
  /** the first or the second part of what cannot be taken out again */
  readonly part?: 1 | 2
  readonly wait: number
  readonly retest?: readonly string[]
  readonly rules: readonly string[]
  readonly how?: readonly Say[]
  readonly cautions?: readonly Say[]
  /** a pause ends with the wait, where the cell ran */
  readonly cell?: 'off' | 'pause'
  /** readings that have to be foretold after it; where they cannot be, nothing goes in */
  readonly needs?: readonly string[]
}

/**
 * Puts one dose into the plan: so much of a product, rounded down, and the water foretold with the rounded amount. Answers false,
 * and adds no dose, where that little cannot be measured or the water after it cannot be foretold.
 */
export function dose(draft: Draft, chosen: Chosen, amount: number, options: DoseOptions): boolean {
  const rounded = amountOf(draft, chosen, amount)
  if (rounded.value <= 0) return false
  const { product } = chosen.item
  roomToday(draft, product)
  const after = foretell(draft, inputsOf(chosen, rounded.value))
  if (options.needs?.some((name) => after[name] === undefined)) return false
  const at = draft.hour
  moveTo(draft, after)
  if (options.cell === 'off' || (options.cell === 'pause' && !draft.cellRuns)) {
    draft.cellOff = true
    draft.cellRuns = false
  }
  draft.steps.push({
    kind: 'dose',
    says: says(product, rounded, options.part),
    product,
    ...onLabel(chosen),
    amount: rounded,
    ...(options.part === undefined ? {} : { part: options.part }),
    how: [
      ...placeFor(draft, product),
      ...(options.how ?? []),
      ...(options.cell === 'pause' && draft.cellRuns ? [say('plan.how.cell_again')] : []),
    ],
    cautions: [...cautionsFor(draft, product), ...(options.cautions ?? [])],
    pump: 'on',
    ...(options.cell && draft.hasCell ? { cell: 'off' as const } : {}),
    at,
    wait: options.wait,
    retest: options.retest ?? [],
    rules: holding(draft, ...options.rules, ...(holds(draft, 'out_of_water') ? ['out_of_water'] : [])),
    notices: [],
    water: draft.column,
    ...costNow(chosen, rounded.value),
    ...lsiNow(draft),
  })
  pass(draft, options.wait)
  return true
}

function says(product: string, { value, unit, packs }: Amount, part: 1 | 2 | undefined): Say {
  const counted = packs !== undefined && packs.whole > 0
  const inPacks = !counted ? 'plan.step.dose' : packs.rest > 0 ? 'plan.step.dose_packs' : 'plan.step.dose_whole_packs'
  const key = part === 2 ? 'plan.step.dose_at_most' : inPacks
  return say(key, {
    product,
    amount: value,
    unit,
    ...(packs ? { whole: packs.whole, rest: packs.rest, pack: packs.pack } : {}),
  })
}

/** A test to be made again before anything that rests on it. */
export function retest(
  draft: Draft,
  readings: readonly string[],
  key: string,
  rules: readonly string[],
  facts: Say['facts'] = {},
): void {
  draft.steps.push({
    kind: 'retest',
    says: say(key, { readings, ...facts }),
    how: [say('plan.how.sample')],
    cautions: [],
    at: draft.hour,
    wait: 0,
    retest: readings,
    rules: holding(draft, ...rules),
    notices: [],
    water: draft.column,
    ...lsiNow(draft),
  })
}

/** A gate that stops what comes after it, or a part of that. */
export function gate(
  draft: Draft,
  key: string,
  rules: readonly string[],
  facts: Say['facts'] = {},
  cautions: readonly Say[] = [],
): void {
  draft.complete = false
  draft.steps.push({
    kind: 'gate',
    says: say(key, facts),
    how: [],
    cautions,
    at: draft.hour,
    wait: 0,
    retest: [],
    rules: holding(draft, ...rules),
    notices: [],
    water: draft.column,
    ...lsiNow(draft),
  })
}
