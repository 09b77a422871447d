import { isProblem } from '../words/problem'
import { amountOf, inputsOf, lsiNow } from './amounts'
import { cautionsFor } from './cautions'
import { chlorineWanted } from './chlorineWanted'
import { choose } from './choose'
import { costNow } from './costNow'
import { type Draft, holding, holds, moveTo, numberOf, rule, say, usable } from './draft'
import { foretell } from './foretell'
import { keptOut } from './keptOut'
import { inPacks } from './measurable'
import { onLabel } from './onLabel'

export const DAY = 24

/** Hours for what pours in to mix, and for the rest where the turnover is not known. Common practice, no source. */
const POURED = 0.5
const OTHER = 4

/** Hours until a dose is mixed in: half an hour for what pours, a turnover for the rest. */
export function mixing(draft: Draft, pours: boolean): number {
  if (pours) return POURED
  return Math.min(DAY, Math.max(1, Math.round(numberOf(draft, 'turnover_time') ?? OTHER)))
}

/**
 * Lets time go by. Sun and bathers take chlorine while the cell does not make it; once a day has gone by since chlorine went in,
 * it is put back by hand. Where the demand is not known, the chlorine is not known either after a day.
 */
export function pass(draft: Draft, hours: number): void {
  draft.hour += hours
  const free = numberOf(draft, 'free_chlorine')
  if (draft.cellRuns || free === undefined || hours <= 0) return
  draft.sinceChlorine += hours
  const days = Math.floor(draft.sinceChlorine / DAY)
  const demand = numberOf(draft, 'chlorine_demand')
  if (demand === undefined) {
    if (days > 0) loseChlorine(draft)
    return
  }
  const used = (demand * hours) / DAY
  if (days > 0 && carryByHand(draft, days, used)) draft.sinceChlorine -= days * DAY
  else moveTo(draft, foretell(draft, { step_chlorine_used: Math.min(free, used) }))
}

/** After a day without the cell nobody knows what is left: it is tested each day, and put back by hand. */
function loseChlorine(draft: Draft): void {
  moveTo(draft, { free_chlorine: undefined, total_chlorine: undefined })
  draft.chlorineLost = true
  draft.complete = false
}

/** What was used, put back by hand on each day of a wait; false where it cannot or need not be. */
function carryByHand(draft: Draft, days: number, used: number): boolean {
  const free = usable(draft, 'free_chlorine')
  const wanted = chlorineWanted(draft)
  if (free === undefined || wanted === undefined || !holds(draft, 'daily_chlorine') || draft.noChlorine) return false
  const small = draft.metals ? rule(draft, 'metals', 'chlorine_step') : undefined
  const rise = Math.min(wanted - free + used, days * (small ?? Number.POSITIVE_INFINITY))
  if (rise <= 0) return false
  const chosen = choose(draft, 'chlorine', { target_free_chlorine: free + rise / days })
  if (
    isProblem(chosen) ||
    keptOut(draft, chosen, chosen.need * days) !== undefined ||
    !fitsToday(draft, chosen.item.product)
  )
    return false
  const each = amountOf(draft, chosen, chosen.need)
  if (each.value === 0) return false
  const total = inPacks(Number((each.value * days).toFixed(9)), chosen.unit, chosen.item.pack)
  moveTo(draft, foretell(draft, { ...inputsOf(chosen, total.value), step_chlorine_used: used }))
  todays(draft).add(chosen.item.product)
  draft.steps.push({
    kind: 'dose',
    says: say('plan.step.daily_chlorine', { product: chosen.item.product, amount: each.value, unit: each.unit, days }),
    product: chosen.item.product,
    ...onLabel(chosen),
    amount: total,
    times: days,
    how: [say('plan.how.dusk')],
    cautions: cautionsFor(draft, chosen.item.product),
    pump: 'on',
    at: draft.hour,
    wait: 0,
    retest: ['free_chlorine'],
    rules: holding(draft, 'daily_chlorine', 'out_of_water'),
    notices: [],
    water: draft.column,
    ...costNow(chosen, total.value),
    ...lsiNow(draft),
  })
  return true
}

/** A step that is nothing but time; the water is the one at its end, with what was carried by hand meanwhile. */
export function wait(
  draft: Draft,
  hours: number,
  key: string,
  rules: readonly string[],
  becomes: () => void = () => {},
  cell?: 'off',
): void {
  const at = draft.hour
  const place = draft.steps.length
  becomes()
  pass(draft, hours)
  draft.steps.splice(place, 0, {
    kind: 'wait',
    says: say(key, { hours }),
    how: [],
    cautions: [],
    ...(cell && draft.hasCell ? { cell } : {}),
    at,
    wait: hours,
    retest: [],
    rules: holding(draft, ...rules),
    notices: [],
    water: draft.column,
    ...lsiNow(draft),
  })
}

/** Waits until tomorrow where a product would be one too many for a day. */
export function roomToday(draft: Draft, product: string): void {
  if (!fitsToday(draft, product)) {
    const tomorrow = (Math.floor(draft.hour / DAY) + 1) * DAY
    wait(draft, tomorrow - draft.hour, 'plan.step.tomorrow', ['three_a_day'])
  }
  todays(draft).add(product)
}

function fitsToday(draft: Draft, product: string): boolean {
  const most = rule(draft, 'three_a_day', 'products')
  const products = todays(draft)
  return most === undefined || products.has(product) || products.size < Math.max(1, most)
}

/** The products of the present day. */
function todays(draft: Draft): Set<string> {
  const day = Math.floor(draft.hour / DAY)
  if (draft.today.day !== day) draft.today = { day, products: new Set() }
  return draft.today.products
}
