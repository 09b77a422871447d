import {
  bareIonicStrength,
  baseBesideCarbonate,
  ionicStrengthOf,
  ligandSum,
  water as point,
  setIonicStrength,
  setPh,
  setTemperature,
  startFree,
} from './equilibrium'
import { type Failure, fail } from './failure'
import { rootNear } from './rootNear'
import { CARBONATE } from './speciesArrays'
import type { Totals } from './totals'
import { readWater, settleCarbonate, tooStrong, type Water } from './water'

/** Furthest pH that a solve looks at; a water beyond is refused rather than answered. */
export const PH_FLOOR = 1
export const PH_CEILING = 13.5

/** How close the bracketed search comes before the last steps, in pH. */
const ROUGH = 1e-4

/**
 * Water of known conserved quantities in a closed system (no CO2 lost or gained): finds its pH at T kelvin. Alkalinity
 * rises with pH at fixed totals, so there is one root.
 * Tolerance 1e-11 in pH, 1e-12 relative in ionic strength.
 * Errors: `unreachable` where no pH from 1 to 13.5 has this alkalinity; `no_convergence`.
 */
export function closedWater(totals: Totals, T: number, guess = 7.5): Water | Failure {
  return solvePh(totals, T, { ph: guess, ionicStrength: bareIonicStrength(totals) }, () =>
    settleCarbonate(point, totals),
  )
}

/**
 * The pH at which the water has the alkalinity of `totals`, for one way of settling its carbonate; the settle step runs
 * after each change of pH. `near` is where the search begins.
 */
export function solvePh(
  totals: Totals,
  T: number,
  near: Pick<Water, 'ph' | 'ionicStrength'>,
  settle: () => void,
): Water | Failure {
  setTemperature(T)
  startFree(point, totals)
  let I = near.ionicStrength
  setIonicStrength(I)
  const excess = (ph: number) => {
    setPh(point, Math.exp(-Math.LN10 * ph), totals)
    settle()
    return alkalinityOf() - totals.alkalinity
  }
  const first = bySecants(excess, near.ph)
  let ph = first?.ph ?? near.ph
  let slope = first?.slope ?? 0
  let last = Number.POSITIVE_INFINITY
  for (let pass = 0; pass < 100; pass++) {
    if (slope === 0) {
      const found = rootNear(excess, ph, 0.25, PH_FLOOR, PH_CEILING, ROUGH)
      if (found === undefined) return fail('unreachable', 'ph', { alkalinity: totals.alkalinity })
      ph = found
      slope = (excess(ph + ROUGH) - excess(ph - ROUGH)) / (2 * ROUGH)
    }
    // close to the root the curve is straight, so one slope serves while ionic strength follows
    const step = excess(ph) / slope
    const strength = ionicStrengthOf(point, totals)
    const strong = tooStrong(strength)
    if (strong) return strong
    const moved = Math.max(Math.abs(step), Math.abs(strength - I) / I)
    if (moved < 1e-11) return readWater(T, totals, I)
    I = strength
    setIonicStrength(I)
    if (moved < last / 2) ph -= step
    else slope = 0
    last = moved
  }
  return fail('no_convergence', 'ph', { residual: last })
}

/** The usual case, a guess that is near: a few secants come about as close, and bring the slope with them. */
function bySecants(excess: (ph: number) => number, guess: number): { ph: number; slope: number } | undefined {
  let before = excess(guess)
  let ph = guess + 0.02
  let step = -0.02
  for (let i = 0; i < 6; i++) {
    const now = excess(ph)
    const slope = (before - now) / step
    if (!(slope > 0)) return undefined
    before = now
    step = now / slope
    if (!(Math.abs(step) < 1)) return undefined
    ph -= step
    if (Math.abs(step) < ROUGH) return { ph, slope }
  }
  return undefined
}

/** Alkalinity of the settled point, eq/L. */
export function alkalinityOf(): number {
  return (point.ligand[CARBONATE] ?? 0) * ligandSum(point, point.base, CARBONATE) + baseBesideCarbonate(point)
}
