import { isFailure } from '../../src/chemistry/failure'
import { type Measured, measuredWater } from '../../src/chemistry/measuredWater'
import type { Water } from '../../src/chemistry/water'

/** A row of test/published/phreeqc-24.json; its units are in the header of that file. */
export interface ReferenceRow {
  readonly T: number
  readonly pH: number
  readonly TA: number
  readonly CaH: number
  readonly NaCl: number
  readonly CYA: number
  readonly B: number
  readonly Mg?: number
  readonly SO4?: number
}

/** mg/L as CaCO3 in one mol/L of calcium and in one eq/L of alkalinity */
export const AS_CALCIUM = 100_087
export const AS_ALKALINITY = AS_CALCIUM / 2

/** The readings behind a row: its chloride is NaCl + 2 (Ca + Mg - SO4). */
export function referenceReadings(row: ReferenceRow): Measured {
  const calcium = row.CaH / AS_CALCIUM
  const magnesium = row.Mg ?? 0
  const sulfate = row.SO4 ?? 0
  return {
    ph: row.pH,
    temperature: row.T + 273.15,
    titratedAlkalinity: row.TA / AS_ALKALINITY,
    calcium,
    magnesium,
    sulfate,
    chloride: row.NaCl / 58_443 + 2 * (calcium + magnesium - sulfate),
    borate: row.B / 10_810,
    cyanurate: row.CYA / 129_075,
    chlorine: 0,
  }
}

export function referenceWater(row: ReferenceRow): Water {
  return number(measuredWater(referenceReadings(row)))
}

/** Fails the test where a result is a failure. */
export function number<T>(result: T): Exclude<T, { failure: unknown }> {
  if (isFailure(result)) throw new Error(JSON.stringify(result))
  return result as Exclude<T, { failure: unknown }>
}
