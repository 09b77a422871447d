import { changedTotals, type WaterChange } from './changedTotals'
import { closedWater } from './closedWater'
import { type Failure, fail, isFailure } from './failure'
import { outside } from './outside'
import { TOTALS, type Totals } from './totals'
import type { Water } from './water'

/**
 * The water after a list of changes, one solve: the conserved quantities change, then pH follows at the water's own
 * temperature with no CO2 exchanged but what the list says.
 * Range: amounts to 1 mol/L, shares 0 to 0.999. Errors: `out_of_range`, `no_such_water` where a quantity would go under 0, those
 * of `closedWater`.
 */
export function waterAfter(totals: Totals, from: Water, changes: readonly WaterChange[]): Water | Failure {
  for (const change of changes) {
    const refused =
      change.kind === 'dilution' || change.kind === 'evaporation'
        ? outside(change.kind, change.share, 0, change.kind === 'dilution' ? 1 : 0.999)
        : outside(change.kind, change.amount, change.kind === 'carbon_dioxide' ? -1 : 0, 1)
    if (refused) return refused
  }
  const after = sound(changedTotals(totals, changes))
  return isFailure(after) ? after : closedWater(after, from.temperature, from.ph)
}

/** Totals that a water can have: finite, none under 0 but alkalinity and inert charge; rounding under 0 becomes 0. */
function sound(totals: Totals): Totals | Failure {
  const checked = { ...totals }
  for (const name of TOTALS) {
    const value = totals[name]
    if (!Number.isFinite(value)) return fail('not_a_number', name)
    if (name === 'alkalinity' || name === 'inert' || value >= 0) continue
    if (value < -1e-12) return fail('no_such_water', name, { left: value })
    checked[name] = 0
  }
  return checked
}
