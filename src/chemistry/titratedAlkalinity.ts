import {
  baseBesideCarbonate,
  endPoint,
  ligandSum,
  setIonicStrength,
  setPh,
  setTemperature,
  startFree,
} from './equilibrium'
import { CARBONATE } from './speciesArrays'
import { settleCarbonate, type Water } from './water'

/** pH at which the alkalinity titration ends (activity scale): Standard Methods 2320 B for 150 mg/L and up. */
export const END_POINT = 10 ** -4.5

/**
 * What a titration of this water to pH 4.5 would read, eq/L: its alkalinity less what is left at the end point, closed, at the
 * water's own temperature and ionic strength. Oxidising chlorine counts where the water's totals have it.
 */
export function titratedAlkalinity({ totals, temperature, ionicStrength }: Water): number {
  setTemperature(temperature)
  startFree(endPoint, totals)
  setIonicStrength(ionicStrength)
  setPh(endPoint, END_POINT, totals)
  settleCarbonate(endPoint, totals)
  const carbonate = (endPoint.ligand[CARBONATE] ?? 0) * ligandSum(endPoint, endPoint.base, CARBONATE)
  return totals.alkalinity - carbonate - baseBesideCarbonate(endPoint)
}
