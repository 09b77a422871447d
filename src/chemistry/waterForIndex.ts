import { type Failure, fail, isFailure } from './failure'
import { langelierIndex } from './langelierIndex'
import { outside } from './outside'
import { rootNear } from './rootNear'
import type { Water } from './water'
import { waterAtPh } from './waterAtPh'

const LOW = 4
const HIGH = 11

/**
 * The water brought by acid or base (total carbonate kept) to the pH where an index has a wanted value: the Langelier index
 * by Standard Methods, or calcite's by full speciation. Both rise with pH at fixed total carbonate, so there is at most
 * one. pH 4 to 11, tolerance 1e-9. Errors: `unreachable` with what the two ends give; those of `waterAtPh`.
 */
export function waterForIndex(from: Water, index: 'langelier' | 'calcite', wanted: number): Water | Failure {
  const refused = outside('target_lsi', wanted, -5, 5)
  if (refused) return refused
  const value = (water: Water) => (index === 'calcite' ? water.calciteIndex : langelierIndex(water))
  const at = (ph: number) => {
    const water = waterAtPh(from, ph)
    return isFailure(water) ? Number.NaN : value(water)
  }
  const ph = rootNear((x) => at(x) - wanted, from.ph - value(from) + wanted, 0.05, LOW, HIGH, 1e-9)
  if (ph === undefined) return fail('unreachable', 'target_lsi', { wanted, low: at(LOW), high: at(HIGH) })
  return waterAtPh(from, ph)
}
