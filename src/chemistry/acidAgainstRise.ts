import { type Failure, isFailure } from './failure'
import type { Totals } from './totals'
import type { Water } from './water'
import { waterAtPh } from './waterAtPh'
import { waterByAir } from './waterByAir'

/**
 * Acid, mol/L of H+, that undoes a pH rise of `rise` by loss of CO2: the water at `ph` plus the rise with its alkalinity
 * kept, brought back to `ph`. Errors: those of `waterByAir`.
 */
export function acidAgainstRise(totals: Totals, at: Water, ph: number, rise: number): number | Failure {
  if (rise <= 0) return 0
  const risen = waterByAir(totals, at.temperature, ph + rise, at.ionicStrength)
  if (isFailure(risen)) return risen
  const back = waterAtPh(risen, ph)
  return isFailure(back) ? back : risen.totals.alkalinity - back.totals.alkalinity
}
