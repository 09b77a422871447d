import { alkalinityOf } from './closedWater'
import { ionicStrengthOf, water as point, setIonicStrength, setPh, setTemperature, startFree } from './equilibrium'
import { type Failure, fail } from './failure'
import { outside } from './outside'
import type { Conserved } from './totals'
import { readWater, settleCarbonate, tooStrong, type Water } from './water'

type Writable = { -readonly [Name in Conserved]: number }

/**
 * A water of known pH and total carbonate; its alkalinity follows, and `close` moves the strong ions so that they stand
 * for it. `totals` is written to. Range pH 1 to 13.5; tolerance 1e-12 relative in ionic strength.
 * Errors: `out_of_range`, `no_convergence`.
 */
export function settledAtPh(
  totals: Writable,
  T: number,
  ph: number,
  ionicStrength: number,
  close: (totals: Writable) => void,
): Water | Failure {
  const refused = outside('ph', ph, 1, 13.5)
  if (refused) return refused
  setTemperature(T)
  startFree(point, totals)
  let I = ionicStrength
  let triedBefore = 0
  let gaveBefore = 0
  let moved = 1
  for (let pass = 0; pass < 100; pass++) {
    setIonicStrength(I)
    setPh(point, 10 ** -ph, totals)
    settleCarbonate(point, totals)
    totals.alkalinity = alkalinityOf()
    close(totals)
    const next = ionicStrengthOf(point, totals)
    const strong = tooStrong(next)
    if (strong) return strong
    moved = Math.abs(next - I) / I
    if (moved < 1e-12) return readWater(T, totals, I)
    // What a tried strength gives is nearly a straight line, so a secant finds the one that gives itself.
    const slope = pass === 0 ? 0 : (next - gaveBefore) / (I - triedBefore)
    triedBefore = I
    gaveBefore = next
    I = Math.abs(slope) < 0.5 ? I + (next - I) / (1 - slope) : next
  }
  return fail('no_convergence', 'ph', { residual: moved })
}
