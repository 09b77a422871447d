import { saturationPh } from './saturationPh'
import type { Water } from './water'

/** Langelier index of a water by Standard Methods 2330 B: pH - pHs. -Infinity without calcium. */
export function langelierIndex(water: Water): number {
  const { temperature, totals, carbonateAlkalinity, ionicStrength, ph } = water
  return ph - saturationPh(temperature, totals.calcium, carbonateAlkalinity, ionicStrength, ph)
}
