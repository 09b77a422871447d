import { isProblem } from '../words/problem'
import { convert } from './convert'

/**
 * A canonical value in `unit`, with the fewest digits that convert back to the very same canonical value: 59 for the
 * 15 °C that were entered as 59 °F, not 59.00000000000001. Where no figure converts back to it exactly, the nearest.
 * Null where the unit cannot hold the value.
 */
export function exactIn(canonical: number, canonicalUnit: string, unit: string): number | null {
  const value = convert(canonical, canonicalUnit, unit)
  if (isProblem(value)) return null
  for (let digits = 1; digits <= MOST_DIGITS; digits++) {
    const shorter = Number(value.toPrecision(digits))
    if (convert(shorter, unit, canonicalUnit) === canonical) return shorter
  }
  return value
}

/** More do not tell two binary numbers apart. */
const MOST_DIGITS = 17
