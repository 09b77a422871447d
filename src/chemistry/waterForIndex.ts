import { type Failure, fail, isFailure } from './failure'
import { langelierIndex } from './langelierIndex'
import { outside } from './outside'
import { rootNear } from './rootNear'
import type { Water } from './water'
import { waterAtPh } from './waterAtPh'

const LOW = 4
const HIGH = 11
const TOLERANCE = 1e-9

/**
 * The water brought by acid or base (total carbonate kept) to the pH where the Langelier index by Standard Methods has a wanted
 * value. It rises with pH at fixed total carbonate, so there is at most one. pH 4 to 11, tolerance 1e-9. Errors: `unreachable` with what the two ends give; those of `waterAtPh`.
 */
export function waterForIndex(from: Water, wanted: number): Water | Failure {
  const refused = outside('target_lsi', wanted, -5, 5)
  if (refused) return refused
  const guess = from.ph - langelierIndex(from) + wanted
  const near = bySecants(from, guess, wanted)
  if (near) return near
  const at = (ph: number) => {
    const water = waterAtPh(from, ph)
    return isFailure(water) ? Number.NaN : langelierIndex(water)
  }
  const ph = rootNear((x) => at(x) - wanted, guess, 0.05, LOW, HIGH, TOLERANCE)
  if (ph === undefined) return fail('unreachable', 'target_lsi', { wanted, low: at(LOW), high: at(HIGH) })
  return waterAtPh(from, ph)
}

/** The usual case: the index rises about as pH does, so that a few secants from a slope of one are there. */
function bySecants(from: Water, guess: number, wanted: number): Water | undefined {
  let before = { ph: from.ph, off: langelierIndex(from) - wanted }
  let ph = guess
  let near = from
  for (let step = 0; step < 7; step++) {
    if (!(ph >= LOW && ph <= HIGH)) return undefined
    const water = waterAtPh(near, ph)
    if (isFailure(water)) return undefined
    near = { ...from, ionicStrength: water.ionicStrength }
    const off = langelierIndex(water) - wanted
    if (Math.abs(off) < TOLERANCE) return water
    const slope = (off - before.off) / (ph - before.ph)
    if (!(slope > 0.2 && slope < 5)) return undefined
    before = { ph, off }
    ph -= off / slope
  }
  return undefined
}
