import type { Failure } from './failure'
import { outside } from './outside'

/** The volumes that are answered for, m³: from a bucket to a lagoon. */
export const LEAST_VOLUME = 0.001
export const MOST_VOLUME = 1_000_000

/** The failure for a volume that is no finite number or lies outside 0.001 to 1 000 000 m³. */
export function volumeOutside(volume: number, quantity = 'volume'): Failure | undefined {
  return outside(quantity, volume, LEAST_VOLUME, MOST_VOLUME)
}
