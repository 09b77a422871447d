import { alkalinityOf } from './closedWater'
import {
  baseBesideCarbonate,
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
import type { Totals } from './totals'
import { readWater, tooStrong, type Water } from './water'

/**
 * The water brought to another pH by CO2 alone, as aeration does it: alkalinity stays, total carbonate follows.
 * Range pH 4.5 to 11. Tolerance 1e-12 relative. Errors: `no_such_water` where cyanurate, borate and hydroxide alone exceed the
 * alkalinity at that pH; `no_convergence`.
 */
export function waterByAir(totals: Totals, T: number, ph: number, I0: number): Water | Failure {
  const refused = outside('ph', ph, 4.5, 11)
  if (refused) return refused
  const after = { ...totals }
  setTemperature(T)
  startFree(point, after)
  let I = I0
  for (let pass = 0; pass < 200; pass++) {
    setIonicStrength(I)
    setPh(point, 10 ** -ph, after)
    const room = after.alkalinity - baseBesideCarbonate(point)
    const free = Math.max(0, room / ligandSum(point, point.base, CARBONATE))
    point.ligand[CARBONATE] = free
    const swept = sweepMetals(point, after)
    after.carbonate = free * ligandSum(point, point.count, CARBONATE)
    const next = ionicStrengthOf(point, after)
    const strong = tooStrong(next)
    if (strong) return strong
    const missed = Math.abs(alkalinityOf() - after.alkalinity) / (Math.abs(after.alkalinity) + 1e-9)
    const moved = Math.max(swept, room > 0 ? missed : 0, Math.abs(next - I) / I)
    I = next
    if (moved >= 1e-11) continue
    if (room <= 0) return fail('no_such_water', 'total_alkalinity', { left: room })
    return readWater(T, after, I)
  }
  return fail('no_convergence', 'ph')
}
