import { type Failure, isFailure } from './failure'
import type { Totals } from './totals'
import type { Water } from './water'
import { waterAtPh } from './waterAtPh'
import { waterByAir } from './waterByAir'

/** Most acid at once, mol/L of H+: 25 mL/m³ of 31.45 % acid (New York State Sanitary Code 6-1.30: a pint in 5000 US gal). */
const CAP = (25e-6 * 1.1565 * 0.3145) / 0.036461

/**
 * In how many equal parts an acid dose is given: each at most the cap, and none that takes pH under 7.2, or 7.0 where the
 * alkalinity is being brought down on purpose. A water at or under that pH is first aerated back to 7.6.
 * Amounts in mol/L of H+.
 */
export function acidDoses(from: Water, start: Totals, acid: number, reducing: boolean): number | Failure {
  if (acid <= 0) return 0
  const floor = reducing ? 7 : 7.2
  const begin =
    from.ph > floor ? { ...from, totals: start } : waterByAir(start, from.temperature, 7.6, from.ionicStrength)
  if (isFailure(begin)) return begin
  const low = waterAtPh(begin, floor)
  if (isFailure(low)) return low
  const room = begin.totals.alkalinity - low.totals.alkalinity
  return Math.ceil(acid / Math.min(CAP, room) - 1e-9)
}
