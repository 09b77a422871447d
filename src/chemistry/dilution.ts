import { type Failure, fail } from './failure'
import { outside } from './outside'
import { volumeOutside } from './volumeOutside'

/** The most that any quantity of these may read, mg/L. */
export const MOST_READING = 1_000_000

/**
 * Share (0 to 1) of the water to drain once and replace, so that a quantity falls from `now` to `most`:
 * (now - most) / (now - fill), all in the same unit. 0 where it is not over. `unreachable` where it is over and the fill
 * water is at or over the limit. Mass balance, the rest mixed.
 */
export function drainFraction(quantity: string, now: number, most: number, fill: number): number | Failure {
  const refused =
    outside(quantity, now, 0, MOST_READING) ??
    outside(`most_${quantity}`, most, 0, MOST_READING) ??
    outside(`fill_${quantity}`, fill, 0, MOST_READING)
  if (refused) return refused
  if (now <= most) return 0
  if (fill >= most) return fail('unreachable', quantity, { wanted: most, fill })
  return (now - most) / (now - fill)
}

/** What a quantity reads after `fraction` (0 to 1) of the water was replaced by fill water: now (1 - x) + fill x. */
export function afterDilution(quantity: string, now: number, fill: number, fraction: number): number | Failure {
  return (
    outside(quantity, now, 0, MOST_READING) ??
    outside(`fill_${quantity}`, fill, 0, MOST_READING) ??
    outside('drain_fraction', fraction, 0, 1) ??
    now * (1 - fraction) + fill * fraction
  )
}

/**
 * Rounds of draining at most `largest` (0.01 to 0.9) at a time that replace as much as one drain of `fraction` would: the
 * least n with 1 - (1 - largest)^n >= fraction. 0 for 0. A fraction of 1 needs the pool emptied: `unreachable`.
 */
export function drainRounds(fraction: number, largest: number): number | Failure {
  const refused = outside('drain_fraction', fraction, 0, 1) ?? outside('largest_single_drain', largest, 0.01, 0.9)
  if (refused) return refused
  if (fraction === 1) return fail('unreachable', 'drain_fraction', { wanted: 1 })
  if (fraction === 0) return 0
  // a hair off, so that what three thirds replace is not made four by rounding
  return Math.max(1, Math.ceil(Math.log1p(-fraction) / Math.log1p(-largest) - 1e-9))
}

/** The share of each of `rounds` equal drains that together replace as much as one of `fraction`: 1 - (1 - x)^(1/n). */
export function roundFraction(fraction: number, rounds: number): number {
  return rounds === 0 ? 0 : -Math.expm1(Math.log1p(-fraction) / rounds)
}

/**
 * Water, m³, to run in while as much overflows, for the same effect as one drain of `fraction`: -volume × ln(1 - x), the pool
 * mixed throughout. A fraction of 1 is never reached: `unreachable`.
 */
export function continuousExchange(fraction: number, volume: number): number | Failure {
  const refused = outside('drain_fraction', fraction, 0, 1) ?? volumeOutside(volume)
  if (refused) return refused
  return fraction === 1 ? fail('unreachable', 'drain_fraction', { wanted: 1 }) : -volume * Math.log1p(-fraction)
}

/**
 * How far, m, the level falls when `fraction` of the water is drained: fraction × mean depth, where walls are upright down to
 * the new level. A drain that lays the shallow floor dry is refused, since below it this no longer holds.
 */
export function drainDepth(fraction: number, meanDepth: number, shallowDepth: number): number | Failure {
  const refused =
    outside('drain_fraction', fraction, 0, 1) ??
    outside('water_depth_mean', meanDepth, 0.02, 30) ??
    outside('depth_shallow', shallowDepth, 0.02, 30)
  if (refused) return refused
  const fall = fraction * meanDepth
  return outside('drain_depth', fall, 0, shallowDepth) ?? fall
}
