import { alkalinityOf } from './closedWater'
import {
  bareIonicStrength,
  ionicStrengthOf,
  water as point,
  setIonicStrength,
  setPh,
  setTemperature,
  startFree,
} from './equilibrium'
import { type Failure, fail } from './failure'
import { outside } from './outside'
import { readWater, settleCarbonate, type Water } from './water'

/**
 * The same water brought to another pH by strong acid (hydrochloric) or base (caustic): total carbonate stays, alkalinity
 * follows. Range pH 1 to 13.5. Tolerance 1e-12 relative in ionic strength. Errors: `out_of_range`, `no_convergence`.
 */
export function waterAtPh(from: Water, ph: number): Water | Failure {
  const refused = outside('ph', ph, 1, 13.5)
  if (refused) return refused
  const totals = { ...from.totals }
  setTemperature(from.temperature)
  startFree(point, totals)
  let I = from.ionicStrength || bareIonicStrength(totals)
  for (let pass = 0; pass < 100; pass++) {
    setIonicStrength(I)
    setPh(point, 10 ** -ph, totals)
    settleCarbonate(point, totals)
    const added = alkalinityOf() - from.totals.alkalinity
    totals.alkalinity = from.totals.alkalinity + added
    totals.sodium = from.totals.sodium + Math.max(0, added)
    totals.chloride = from.totals.chloride + Math.max(0, -added)
    const next = ionicStrengthOf(point, totals)
    const moved = Math.abs(next - I) / I
    I = next
    if (moved < 1e-12) return readWater(from.temperature, totals, I)
  }
  return fail('no_convergence', 'ph')
}
