import { type Failure, isFailure } from './failure'
import { settledAtPh } from './settledAtPh'
import { titratedAlkalinity } from './titratedAlkalinity'
import type { Totals } from './totals'
import type { Water } from './water'

/**
 * The conserved quantities of a water whose readings left chlorine out, with `chlorine` mol/L of it in, at the same pH: what
 * of it is hypochlorite or chlorinated cyanurate counts as alkalinity, and sodium stands against it.
 */
export function withChlorine(water: Water, chlorine: number): Totals | Failure {
  if (chlorine === water.totals.chlorine) return water.totals
  const chlorinated = atSamePh(water, chlorine)
  return isFailure(chlorinated) ? chlorinated : chlorinated.totals
}

/** The alkalinity that a titration would read, eq/L, where the chlorine does not count in it. */
export function readingWithoutChlorine(water: Water): number | Failure {
  if (water.totals.chlorine === 0) return titratedAlkalinity(water)
  const without = atSamePh(water, 0)
  return isFailure(without) ? without : titratedAlkalinity(without)
}

function atSamePh(water: Water, chlorine: number): Water | Failure {
  const start = { ...water.totals, chlorine }
  return settledAtPh(start, water.temperature, water.ph, water.ionicStrength, (totals) => {
    const sodium = water.totals.sodium + totals.alkalinity - water.totals.alkalinity
    totals.sodium = Math.max(0, sodium)
    totals.chloride = water.totals.chloride + Math.max(0, -sodium)
  })
}
