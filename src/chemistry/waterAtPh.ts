import type { Failure } from './failure'
import { settledAtPh } from './settledAtPh'
import type { Water } from './water'

/**
 * The same water brought to another pH by strong acid (hydrochloric) or base (caustic): total carbonate stays, alkalinity
 * follows. Range, tolerance and errors: as `settledAtPh`.
 */
export function waterAtPh(from: Water, ph: number): Water | Failure {
  return settledAtPh({ ...from.totals }, from.temperature, ph, from.ionicStrength, (totals) => {
    const added = totals.alkalinity - from.totals.alkalinity
    totals.sodium = from.totals.sodium + Math.max(0, added)
    totals.chloride = from.totals.chloride + Math.max(0, -added)
  })
}
