import type { Failure } from './failure'
import { outside } from './outside'

/**
 * Volume, m³, of the water in which a known mass of salt raised the reading: mass / rise.
 *
 * `mass` kg (0.001 to 100 000), readings mg/L as NaCl (0 to 100 000). The salt has to be dissolved and
 * mixed, and no water may have been lost or added between the readings. A reading that did not rise is refused: it
 * says nothing about the volume. Mass balance; 1 kg in 1 m³ is 1000 mg/L.
 */
export function volumeFromSaltRise(mass: number, before: number, after: number): number | Failure {
  const refused =
    outside('salt_mass_added', mass, 0.001, 100_000) ??
    outside('salt_before', before, 0, 100_000) ??
    outside('salt', after, 0, 100_000)
  if (refused) return refused
  return outside('salt', after, before + SMALLEST_RISE, 100_000) ?? (1_000 * mass) / (after - before)
}

/** mg/L; under it the rise is within any salt test's resolution. */
const SMALLEST_RISE = 10
