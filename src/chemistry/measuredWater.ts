import {
  bareIonicStrength,
  baseBesideCarbonate,
  endPoint,
  ionicStrengthOf,
  ligandSum,
  water as point,
  setIonicStrength,
  setPh,
  setTemperature,
  startFree,
  sweepMetals,
} from './equilibrium'
import { type Failure, fail } from './failure'
import { outside } from './outside'
import { CARBONATE } from './speciesArrays'
import { END_POINT } from './titratedAlkalinity'
import type { Totals } from './totals'
import { readWater, tooStrong, type Water } from './water'

/** A water as measured; mol/L, eq/L and kelvin. */
export interface Measured {
  readonly ph: number
  readonly temperature: number
  /** alkalinity by titration to pH 4.5 */
  readonly titratedAlkalinity: number
  readonly calcium: number
  readonly magnesium: number
  readonly sulfate: number
  readonly chloride: number
  readonly borate: number
  readonly cyanurate: number
  /** oxidising chlorine that stood in the bottle and counts in the titration; 0 where it is not counted */
  readonly chlorine: number
}

/**
 * Water from a measured pH and a titrated alkalinity: finds total carbonate, sodium and everything else.
 *
 * The titration is closed (no CO2 lost), at the pool's temperature and ionic strength, and not diluted: the reading is
 * Alk at the sample's pH less Alk at pH 4.5, where bicarbonate and H+ are left. Sodium closes the charge; where it would
 * be negative it is 0 and chloride closes it.
 *
 * Range: pH 5 to 11, 0 to 45 °C (refused outside), ionic strength to 0.2 mol/L (the fitted range; refused over 1).
 * Errors: `no_such_water` where cyanurate, borate and hydroxide alone exceed the reading; `no_convergence` when 200
 * passes do not bring every change under 1e-10.
 */
export function measuredWater(m: Measured): Water | Failure {
  const refused =
    outside('ph', m.ph, 5, 11) ??
    outside('temperature', m.temperature, 273.15, 318.15) ??
    outside('total_alkalinity', m.titratedAlkalinity, 0, 0.1) ??
    outside('calcium_hardness', m.calcium, 0, 0.1) ??
    outside('magnesium', m.magnesium, 0, 0.1) ??
    outside('sulfate', m.sulfate, 0, 0.2) ??
    outside('chloride', m.chloride, 0, 0.8) ??
    outside('borate', m.borate, 0, 0.05) ??
    outside('cyanuric_acid', m.cyanurate, 0, 0.02) ??
    outside('free_chlorine', m.chlorine, 0, 0.01)
  if (refused) return refused

  const h = Math.exp(-Math.LN10 * m.ph)
  setTemperature(m.temperature)
  const totals = {
    alkalinity: m.titratedAlkalinity,
    carbonate: m.titratedAlkalinity,
    calcium: m.calcium,
    magnesium: m.magnesium,
    sodium: 0,
    chloride: m.chloride,
    sulfate: m.sulfate,
    borate: m.borate,
    cyanurate: m.cyanurate,
    chlorine: m.chlorine,
    inert: 0,
  }
  closeCharge(totals, m.chloride)
  startFree(point, totals)
  startFree(endPoint, totals)
  let I = bareIonicStrength(totals)
  let room = 0
  let change = 1
  for (let pass = 0; pass < 200; pass++) {
    setIonicStrength(I)
    setPh(endPoint, END_POINT, totals)
    setPh(point, h, totals)
    const count = ligandSum(point, point.count, CARBONATE)
    const base = ligandSum(point, point.base, CARBONATE)
    const endCount = ligandSum(endPoint, endPoint.count, CARBONATE)
    const endBase = ligandSum(endPoint, endPoint.base, CARBONATE)
    const beside = baseBesideCarbonate(point)
    room = m.titratedAlkalinity - beside + baseBesideCarbonate(endPoint)
    const before = point.ligand[CARBONATE] ?? 0
    const carbonate = Math.max(0, room / (base - (count * endBase) / endCount))
    point.ligand[CARBONATE] = carbonate
    totals.carbonate = carbonate * count
    endPoint.ligand[CARBONATE] = totals.carbonate / endCount
    totals.alkalinity = carbonate * base + beside
    closeCharge(totals, m.chloride)
    change = carbonate === before ? 0 : Math.abs(carbonate - before) / Math.max(carbonate, before)
    change = Math.max(change, sweepMetals(point, totals), sweepMetals(endPoint, totals))
    const next = ionicStrengthOf(point, totals)
    change = Math.max(change, Math.abs(next - I) / I)
    I = next
    if (change < 1e-10) break
  }
  if (!(change < 1e-9)) return fail('no_convergence', 'total_alkalinity', { residual: change })
  if (room <= 0) return fail('no_such_water', 'total_alkalinity', { total: m.titratedAlkalinity, left: room })
  return tooStrong(I) ?? readWater(m.temperature, totals, I)
}

type Writable = { -readonly [K in keyof Totals]: number }

function closeCharge(totals: Writable, chloride: number): void {
  const cations = 2 * (totals.calcium + totals.magnesium)
  const sodium = totals.alkalinity + chloride + 2 * totals.sulfate - cations
  totals.sodium = Math.max(0, sodium)
  totals.chloride = sodium < 0 ? chloride - sodium : chloride
}
