import { type CyanurateConstants, cyanurateConstants, type HoclModel } from './cyanurateModels'
import { type Failure, fail, isFailure } from './failure'
import { outside } from './outside'

/** Chlorine at equilibrium with cyanurate; mol/L of oxidising chlorine (a mole of Cl2Cy- counts two). */
export interface ChlorineEquilibrium {
  readonly hocl: number
  readonly ocl: number
  /** on cyanurates with one, two, three chlorines */
  readonly bound: readonly [mono: number, di: number, tri: number]
  /** hocl as a share of all free chlorine; with no chlorine, the share that the first trace would have */
  readonly hoclShare: number
}

export const MOST_CHLORINE = 0.01
export const MOST_CYANURATE = 0.1

/** Cyanurate by its number of chlorines, per [H2Cy-] and power of [HOCl]; and what a mole of HOCl brings with its OCl-. */
interface Binding {
  readonly alpha: number
  readonly none: number
  readonly mono: number
  readonly di: number
  readonly tri: number
}

function binding(k: CyanurateConstants, ph: number): Binding {
  const h = Math.exp(-Math.LN10 * ph)
  const second = k.k10 / h
  const di = 1 / (k.k9a * k.k7a)
  const acidDi = (di * h) / k.k2
  return {
    alpha: 1 + k.hypochlorous / h,
    none: h / k.k6 + 1 + second + (second * k.k12) / h,
    mono: (h / k.k4 + 1 + k.k8 / h) / k.k9a,
    di: di + acidDi,
    tri: acidDi / k.k1a,
  }
}

/**
 * Distributes free chlorine (as DPD reads it: HOCl, OCl- and chlorinated cyanurates) at T kelvin and pH, by a published model
 * at zero ionic strength; pH is taken as -log10 of the concentration of H+. `chlorine` to 0.01 mol/L of Cl2 (709 mg/L),
 * `cyanurate` to 0.1 mol/L, pH 5 to 10.
 *
 * One equation in [HOCl]: the chlorine balance, cyanurate being shared by the binding polynomial. It rises throughout, so a
 * bracketed Newton step cannot miss; to 1e-13 of [HOCl].
 *
 * Ionic strength is left out, as both models do. At 0.055 mol/L (3200 mg/L of salt) the exchange of chlorine between
 * cyanurates keeps its constants (ions of equal charge on both sides) while H3Cy and HOCl lose 0.1 in pK: with stabilizer HOCl
 * would be 9, 4, 2 % lower at pH 7.0, 7.5, 8.0, without it 5, 10, 14 %. The acid forms that the 2019 model leaves out
 * are worth 1 to 2 % of HOCl from pH 7.0 to 8.5, 6 % at 6.5, 14 % at 6.0.
 *
 * The 2019 abstract says that 2 mg/L from dichlor at pH 7.0 leave 0.90 mg/L unbound at 25 °C and 0.60 at 5 °C; its
 * own equations give 0.910 and 0.625. Tried: the logarithmic form of the fits (-0.002 at both), 0.89 mg of Cy a mg (-0.001),
 * the species left out of the simple model (+0.001, +0.002), ionic strength 0.01 (+0.001, -0.001). Only K7a carries
 * that far: its 95 % interval, ±0.059 in pK, is ±0.022 and ±0.024. The rest is within the fit's own uncertainty, and 0.60
 * looks rounded (the abstract calls the two 50 % apart).
 */
export function chlorineEquilibrium(
  model: HoclModel,
  T: number,
  ph: number,
  chlorine: number,
  cyanurate: number,
): ChlorineEquilibrium | Failure {
  const refused = outsideWater(ph, cyanurate) ?? outside('free_chlorine', chlorine, 0, MOST_CHLORINE)
  if (refused) return refused
  const constants = cyanurateConstants(model, T)
  if (isFailure(constants)) return constants
  const b = binding(constants, ph)
  const x = solveHocl(b, chlorine, cyanurate)
  if (Number.isNaN(x)) return fail('no_convergence', 'hocl')
  const perMole = cyanurate / (b.none + x * (b.mono + x * (b.di + x * b.tri)))
  return {
    hocl: x,
    ocl: (b.alpha - 1) * x,
    bound: [perMole * b.mono * x, 2 * perMole * b.di * x * x, 3 * perMole * b.tri * x * x * x],
    hoclShare: 1 / (b.alpha + perMole * (b.mono + x * (2 * b.di + x * 3 * b.tri))),
  }
}

/** [HOCl] that makes up the chlorine; NaN when 100 steps did not settle it. */
function solveHocl(b: Binding, chlorine: number, cyanurate: number): number {
  const { alpha, none, mono, di, tri } = b
  let low = 0
  let high = chlorine / alpha
  let x = chlorine / (alpha + (cyanurate * mono) / none)
  for (let i = 0; i < 100; i++) {
    const sum = none + x * (mono + x * (di + x * tri))
    const bound = x * (mono + x * (2 * di + x * 3 * tri))
    const excess = alpha * x + (cyanurate * bound) / sum - chlorine
    if (excess > 0) high = x
    else low = x
    const sumSlope = mono + x * (2 * di + x * 3 * tri)
    const boundSlope = mono + x * (4 * di + x * 9 * tri)
    const slope = alpha + (cyanurate * (boundSlope * sum - bound * sumSlope)) / (sum * sum)
    let next = x - excess / slope
    if (!(next >= low && next <= high)) next = (low + high) / 2
    if (Math.abs(next - x) <= 1e-13 * next) return next
    x = next
  }
  return Number.NaN
}

/**
 * Free chlorine, mol/L of Cl2, at which [HOCl] is `hocl` mol/L (0 to 0.01): the chlorine balance read forward, with the same
 * model, limits and meaning as `chlorineEquilibrium`.
 */
export function chlorineForHocl(
  model: HoclModel,
  T: number,
  ph: number,
  hocl: number,
  cyanurate: number,
): number | Failure {
  const refused = outsideWater(ph, cyanurate) ?? outside('target_hocl', hocl, 0, MOST_CHLORINE)
  if (refused) return refused
  const constants = cyanurateConstants(model, T)
  if (isFailure(constants)) return constants
  const { alpha, none, mono, di, tri } = binding(constants, ph)
  const sum = none + hocl * (mono + hocl * (di + hocl * tri))
  return hocl * (alpha + (cyanurate * (mono + hocl * (2 * di + hocl * 3 * tri))) / sum)
}

function outsideWater(ph: number, cyanurate: number): Failure | undefined {
  return outside('ph', ph, 5, 10) ?? outside('cyanuric_acid', cyanurate, 0, MOST_CYANURATE)
}
