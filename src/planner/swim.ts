import type { Column } from './bench'
import { bandOf, type Draft, numberIn, numberOf, rule, say, usable } from './draft'
import type { Say, Step, Swim } from './step'

/** Whether people may swim in the water as it was measured. Label and local code come first. */
export function maySwim(draft: Draft): Swim {
  const free = usable(draft, 'free_chlorine')
  const ph = usable(draft, 'ph')
  const reasons = [
    ...(free === undefined ? [say('plan.swim.chlorine_unknown')] : chlorineReasons(draft, draft.column, free)),
    ...(ph === undefined ? [say('plan.swim.ph_unknown')] : phReasons(draft, ph)),
    ...sightReasons(draft),
    ...combinedReasons(draft, draft.column, numberIn(draft.answers, 'combined_chlorine')),
  ]
  return { now: reasons.length === 0 ? 'yes' : 'no', reasons }
}

/**
 * The number of the step after which, by what is foretold from there to the end, people may swim again; a new test has to read
 * so. Undefined where nothing tells it: the floor cannot be seen, or chlorine or pH is not known.
 */
export function swimAfter(draft: Draft): number | undefined {
  if (sightReasons(draft).length > 0) return undefined
  const closed = draft.steps.findLastIndex((step) => !isFit(draft, step))
  return closed + 2 <= draft.steps.length ? closed + 2 : undefined
}

function isFit(draft: Draft, { water, kind }: Step): boolean {
  const [free, total, ph] = ['free_chlorine', 'total_chlorine', 'ph'].map((name) => water.get(name))
  if (typeof free !== 'number' || typeof ph !== 'number' || kind === 'gate') return false
  const combined = typeof total === 'number' ? Math.max(0, total - free) : undefined
  const against = [
    ...chlorineReasons(draft, water, free),
    ...phReasons(draft, ph),
    ...combinedReasons(draft, water, combined),
  ]
  return against.length === 0
}

function chlorineReasons(draft: Draft, water: Column, free: number): readonly Say[] {
  const band = bandOf(draft, 'free_chlorine', water)
  const closing = rule(draft, 'stabilizer_ratio', 'closing')
  const stabilizer = water.get('cyanuric_acid') ?? numberOf(draft, 'cyanuric_acid')
  return [
    ...(band?.low !== undefined && free < band.low ? [say('plan.swim.chlorine_low', { free, least: band.low })] : []),
    ...(band?.high !== undefined && free > band.high
      ? [say('plan.swim.chlorine_high', { free, most: band.high })]
      : []),
    ...(closing !== undefined && typeof stabilizer === 'number' && stabilizer > closing * free
      ? [say('plan.swim.ratio', { closing })]
      : []),
  ]
}

function phReasons(draft: Draft, ph: number): readonly Say[] {
  const least = rule(draft, 'swim_again', 'ph_least')
  const most = rule(draft, 'swim_again', 'ph_most')
  return (least !== undefined && ph < least) || (most !== undefined && ph > most) ? [say('plan.swim.ph', { ph })] : []
}

/** Looks of the water through which the floor cannot be seen. */
const HIDE_THE_FLOOR = new Set(['cloudy', 'green', 'brown'])

/** What the eye and the turbidity say; no step foretells it. */
function sightReasons(draft: Draft): readonly Say[] {
  const clear = bandOf(draft, 'turbidity')?.high
  const turbidity = numberOf(draft, 'turbidity')
  const hidden = HIDE_THE_FLOOR.has(String(draft.column.get('water_look')))
  return [
    ...(hidden && rule(draft, 'swim_again', 'ph_least') !== undefined ? [say('plan.swim.floor')] : []),
    ...(clear !== undefined && turbidity !== undefined && turbidity > clear
      ? [say('plan.swim.turbid', { turbidity })]
      : []),
  ]
}

function combinedReasons(draft: Draft, water: Column, combined: number | undefined): readonly Say[] {
  const allowed = bandOf(draft, 'combined_chlorine', water)?.high
  return combined !== undefined && allowed !== undefined && combined > allowed + ROUNDING
    ? [say('plan.swim.combined', { combined })]
    : []
}

/** Total less free chlorine of two decimals is not exact. */
const ROUNDING = 1e-6
