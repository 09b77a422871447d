import {
  baseBesideCarbonate,
  endPoint,
  ligandSum,
  water as point,
  setIonicStrength,
  setPh,
  setTemperature,
  startFree,
} from './equilibrium'
import { type Failure, fail } from './failure'
import { outside } from './outside'
import { CARBONATE } from './speciesArrays'
import { END_POINT } from './titratedAlkalinity'
import { NO_TOTALS } from './totals'

/**
 * Carbonate alkalinity [HCO3-] + 2 [CO3--], eq/L, from a titrated one at a known ionic strength, without ion pairs: the
 * reading less what cyanurate, borate, hydroxide and H+ give up between the sample's pH and the titration's end at 4.5, and with
 * the bicarbonate that is left there.
 *
 * T kelvin, concentrations mol/L. Range pH 5 to 11, 0 to 45 °C, ionic strength 0 to 1 (fitted to 0.2).
 * Errors: `out_of_range`; `no_such_water` where cyanurate, borate and hydroxide alone exceed the reading.
 */
export function carbonateAlkalinity(
  ph: number,
  T: number,
  titratedAlkalinity: number,
  cyanurate: number,
  borate: number,
  I: number,
): number | Failure {
  const refused =
    outside('ph', ph, 5, 11) ??
    outside('temperature', T, 273.15, 318.15) ??
    outside('total_alkalinity', titratedAlkalinity, 0, 0.1) ??
    outside('cyanuric_acid', cyanurate, 0, 0.02) ??
    outside('borate', borate, 0, 0.05) ??
    outside('ionic_strength', I, 0, 1)
  if (refused) return refused
  const totals = { ...NO_TOTALS, cyanurate, borate }
  setTemperature(T)
  for (const p of [endPoint, point]) startFree(p, totals)
  setIonicStrength(I)
  setPh(endPoint, END_POINT, totals)
  setPh(point, 10 ** -ph, totals)
  const room = titratedAlkalinity - baseBesideCarbonate(point) + baseBesideCarbonate(endPoint)
  if (room <= 0) return fail('no_such_water', 'total_alkalinity', { total: titratedAlkalinity, left: room })
  const base = ligandSum(point, point.base, CARBONATE)
  const count = ligandSum(point, point.count, CARBONATE)
  const left = ligandSum(endPoint, endPoint.base, CARBONATE) / ligandSum(endPoint, endPoint.count, CARBONATE)
  return (room * base) / (base - count * left)
}
