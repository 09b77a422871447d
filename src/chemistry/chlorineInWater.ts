import { alkalinityOf } from './closedWater'
import { water as point, setIonicStrength, setPh, setTemperature, startFree } from './equilibrium'
import { type Failure, isFailure } from './failure'
import type { Totals } from './totals'
import { settleCarbonate, type Water } from './water'
import { waterAtPh } from './waterAtPh'

/**
 * The conserved quantities of a water whose readings left chlorine out, with `chlorine` mol/L of it in, at the same pH: what
 * of it is hypochlorite or chlorinated cyanurate counts as alkalinity, and sodium stands against it.
 */
export function withChlorine(water: Water, chlorine: number): Totals {
  if (chlorine === water.totals.chlorine) return water.totals
  const totals = { ...water.totals, chlorine }
  setTemperature(water.temperature)
  startFree(point, totals)
  setIonicStrength(water.ionicStrength)
  setPh(point, 10 ** -water.ph, totals)
  settleCarbonate(point, totals)
  const alkalinity = alkalinityOf()
  const sodium = water.totals.sodium + alkalinity - water.totals.alkalinity
  return { ...totals, alkalinity, sodium }
}

/** The alkalinity that a titration would read, eq/L, where the chlorine does not count in it. */
export function readingWithoutChlorine(water: Water): number | Failure {
  if (water.totals.chlorine === 0) return water.titratedAlkalinity
  const without = waterAtPh({ ...water, totals: { ...water.totals, chlorine: 0 } }, water.ph)
  return isFailure(without) ? without : without.titratedAlkalinity
}
