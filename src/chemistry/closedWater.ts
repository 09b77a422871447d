import {
  bareIonicStrength,
  baseBesideCarbonate,
  CARBONATE,
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
import type { Totals } from './totals'
import { readWater, settleCarbonate, type Water } from './water'

/** Furthest pH that a solve looks at; a water beyond is refused rather than answered. */
export const PH_FLOOR = 1
export const PH_CEILING = 13.5

/**
 * Water of known conserved quantities in a closed system (no CO2 lost or gained): finds its pH at T kelvin. Alkalinity
 * rises with pH at fixed totals, so there is one root.
 * Tolerance 1e-11 in pH, 1e-12 relative in ionic strength.
 * Errors: `unreachable` where no pH from 1 to 13.5 has this alkalinity; `no_convergence`.
 */
export function closedWater(totals: Totals, T: number, guess = 7.5): Water | Failure {
  return solvePh(totals, T, guess, () => settleCarbonate(point, totals))
}

/**
 * The pH at which the water has the alkalinity of `totals`, for one way of settling its carbonate; the settle step runs
 * after each change of pH.
 */
export function solvePh(totals: Totals, T: number, guess: number, settle: () => void): Water | Failure {
  setTemperature(T)
  startFree(point, totals)
  let I = bareIonicStrength(totals)
  let ph = guess
  let step = 0.25
  const excess = (x: number) => {
    setPh(point, 10 ** -x, totals)
    settle()
    return alkalinityOf() - totals.alkalinity
  }
  for (let pass = 0; pass < 100; pass++) {
    setIonicStrength(I)
    const next = rootNear(excess, ph, step, PH_FLOOR, PH_CEILING, pass === 0 ? 1e-6 : 1e-12)
    if (next === undefined) return fail('unreachable', 'ph', { alkalinity: totals.alkalinity })
    excess(next)
    const strength = ionicStrengthOf(point, totals)
    const moved = Math.max(Math.abs(next - ph), Math.abs(strength - I) / I)
    ph = next
    I = strength
    if (moved < 1e-11) return readWater(T, totals, I)
    step = Math.max(1e-9, moved / 4)
  }
  return fail('no_convergence', 'ph')
}

/** Alkalinity of the settled point, eq/L. */
export function alkalinityOf(): number {
  return (point.ligand[CARBONATE] ?? 0) * ligandSum(point, point.base, CARBONATE) + baseBesideCarbonate(point)
}
