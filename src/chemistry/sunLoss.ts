import { chlorineEquilibrium } from './chlorineEquilibrium'
import type { HoclModel } from './cyanurateModels'
import { type Failure, fail, isFailure } from './failure'
import { outside } from './outside'

/**
 * First-order rates of photolysis, 1/s, at the water's surface on a clear summer noon at 47° N: Nowell & Hoigné, Water Research
 * 26 (1992) 593-598, abstract.
 */
export const PHOTOLYSIS_HOCL = 2e-4
export const PHOTOLYSIS_OCL = 1.2e-3

/**
 * The same for chlorine bound to cyanurate. No published rate was read: this one makes the half-life of 6 to 8 hours with
 * 25 to 50 mg/L of stabilizer, and the little gain above 50 to 80, that are common practice (from memory).
 */
export const PHOTOLYSIS_BOUND = 1.6e-5

/** Integration steps an hour; twice as many move no result by a part in a million. */
const STEPS_AN_HOUR = 8

/**
 * Free chlorine, mol/L of Cl2, left of `chlorine` after `hours` (0 to 24) of that sun, nothing else using it up.
 *
 * HOCl and OCl- go at their published rates, chlorine bound to cyanurate at its own (common practice), and what is bound
 * refills what is not at once (`model`, T kelvin): with stabilizer this is an estimate. Rates are those of the surface; light
 * falls with depth, so a pool loses less. The annex of the US model code calls no general rate of loss usable.
 * Fourth-order Runge-Kutta on ln(chlorine), exact without stabilizer.
 */
export function chlorineLeftInSun(
  model: HoclModel,
  T: number,
  ph: number,
  chlorine: number,
  cyanurate: number,
  hours: number,
): number | Failure {
  const refused = outside('hours', hours, 0, 24)
  if (refused) return refused
  const start = chlorineEquilibrium(model, T, ph, chlorine, cyanurate)
  if (isFailure(start)) return start
  if (chlorine === 0 || hours === 0) return chlorine
  const oclPerHocl = start.ocl / start.hocl
  const rate = (logarithm: number): number => {
    const water = chlorineEquilibrium(model, T, ph, Math.exp(logarithm), cyanurate)
    if (isFailure(water)) return Number.NaN
    const unbound = water.hoclShare * (1 + oclPerHocl)
    return water.hoclShare * (PHOTOLYSIS_HOCL + PHOTOLYSIS_OCL * oclPerHocl) + (1 - unbound) * PHOTOLYSIS_BOUND
  }
  const steps = Math.max(1, Math.ceil(hours * STEPS_AN_HOUR))
  const dt = (hours * 3_600) / steps
  let y = Math.log(chlorine)
  for (let i = 0; i < steps; i++) {
    const k1 = rate(y)
    const k2 = rate(y - (dt / 2) * k1)
    const k3 = rate(y - (dt / 2) * k2)
    const k4 = rate(y - dt * k3)
    y -= (dt / 6) * (k1 + 2 * k2 + 2 * k3 + k4)
  }
  return Number.isNaN(y) ? fail('no_convergence', 'free_chlorine') : Math.exp(y)
}
