import { readHeading } from './heading'
import type { Known } from './known'

/**
 * An analyte's name with the fraction that stands in a column of its own, where that tells what the name alone leaves
 * open: chlorine, free. Dissolved and total copper are both copper, and keep their name.
 */
export function withFraction(name: string, fraction: string, known: ReadonlyMap<string, Known>): string {
  if (name === '' || fraction === '' || fraction.length > 60) return name
  if ((readHeading(name, known).meaning?.quantities.length ?? 0) < 2) return name
  const whole = `${name}, ${fraction}`
  return readHeading(whole, known).meaning?.quantities.length === 1 ? whole : name
}

/** The same for many rows of a file, which has few analytes. */
export function createNaming(known: ReadonlyMap<string, Known>): (name: string, fraction: string) => string {
  const seen = new Map<string, string>()
  return (name, fraction) => {
    if (fraction === '') return name
    const key = `${name}\n${fraction}`
    const before = seen.get(key)
    if (before !== undefined) return before
    const found = withFraction(name, fraction, known)
    if (seen.size < 1_000) seen.set(key, found)
    return found
  }
}
