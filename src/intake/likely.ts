import type { Known } from './known'

/**
 * Below these a reading from a pool that makes its chlorine from salt is likelier in another unit, though water without
 * any is plausible: 3.2 is salt in g/L. In the canonical unit.
 */
const LEAST_IN_USE: Readonly<Record<string, number>> = { salt: 50, cell_salt_reading: 50 }

/** The range outside of which a reading is kept and flagged; zero is told apart by `isLikely`. */
export function likelyRange({ name, plausible, accept }: Known): readonly [number, number] | undefined {
  const range = plausible ?? accept
  const least = Object.hasOwn(LEAST_IN_USE, name) ? LEAST_IN_USE[name] : undefined
  return range === undefined || least === undefined ? range : [Math.max(least, range[0]), range[1]]
}

/** Whether nothing need be said of a reading. A zero is what it is in every unit. */
export function isLikely(value: number, known: Known, [least, most]: readonly [number, number]): boolean {
  if (value === 0) return (known.plausible ?? known.accept ?? [0])[0] <= 0
  return value >= least && value <= most
}
