import { CELL_FUNCTIONS } from './cell'
import { CHLORINE_FUNCTIONS } from './chlorine'
import { CHLORINE_LABEL_FUNCTIONS } from './chlorine-label'
import { CHLORINE_PRODUCT_FUNCTIONS } from './chlorine-product'
import { CHLORINE_USE_FUNCTIONS } from './chlorine-use'
import type { LockedFunction } from './define'
import { DILUTION_FUNCTIONS } from './dilution'
import { EVAPORATION_FUNCTIONS } from './evaporation'
import { INDEX_TABLE_FUNCTIONS } from './index-table'
import { POOL_FUNCTIONS } from './pool'
import { SALT_FUNCTIONS } from './salt'
import { WATER_FUNCTIONS } from './water'
import { PLAN_FUNCTIONS } from './waterAfterStep'

/** Every locked function, group by group. Formula engine, reference page and tests all read this one list. */
export const LOCKED: readonly LockedFunction[] = [
  ...POOL_FUNCTIONS,
  ...EVAPORATION_FUNCTIONS,
  ...SALT_FUNCTIONS,
  ...WATER_FUNCTIONS,
  ...INDEX_TABLE_FUNCTIONS,
  ...CHLORINE_FUNCTIONS,
  ...CHLORINE_USE_FUNCTIONS,
  ...CHLORINE_PRODUCT_FUNCTIONS,
  ...CHLORINE_LABEL_FUNCTIONS,
  ...CELL_FUNCTIONS,
  ...DILUTION_FUNCTIONS,
  ...PLAN_FUNCTIONS,
]

/** The locked functions by name. */
export const FUNCTIONS = namesOf(LOCKED)

/** The locked function of that name, in capitals; undefined when there is none. */
export function lockedFunction(name: string): LockedFunction | undefined {
  return FUNCTIONS.get(name)
}

/**
 * The functions by name.
 * @throws RangeError when a name is not one that a formula can hold, or stands twice: a defect of ours.
 */
export function namesOf(functions: readonly LockedFunction[]): ReadonlyMap<string, LockedFunction> {
  const names = new Map<string, LockedFunction>()
  for (const f of functions) {
    // letters and digits alone would read as a cell address of the engine: CO2, PH7
    if (!/^[A-Z][A-Z0-9]*(_[A-Z0-9]+)*$/.test(f.name) || /^[A-Z]{1,3}[0-9]+$/.test(f.name)) {
      throw new RangeError(`"${f.name}" is no name for a locked function`)
    }
    if (names.has(f.name)) throw new RangeError(`two locked functions are called ${f.name}`)
    names.set(f.name, f)
  }
  return names
}
