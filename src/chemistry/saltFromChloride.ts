import type { Failure } from './failure'
import { MOLAR_MASS } from './molarMass'
import { outside } from './outside'

/** Sodium chloride, mg/L, that holds `chloride` mg/L (0 to 60 000): × 58.443 / 35.453. */
export function saltFromChloride(chloride: number): number | Failure {
  return outside('chloride', chloride, 0, 60_000) ?? (chloride * MOLAR_MASS.sodiumChloride) / MOLAR_MASS.chloride
}

/** Potassium chloride, kg, with the chloride of `salt` kg of sodium chloride (0 to 1 000 000): × 74.551 / 58.443. */
export function potassiumChlorideForSalt(salt: number): number | Failure {
  return outside('salt_mass', salt, 0, 1_000_000) ?? (salt * MOLAR_MASS.potassiumChloride) / MOLAR_MASS.sodiumChloride
}
