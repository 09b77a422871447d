import type { Failure } from './failure'
import { outside } from './outside'
import { volumeOutside } from './volumeOutside'

/**
 * Water, L/day, that left the pool together with its salt (leak, splash, backwash; evaporation takes no salt) while fresh
 * water kept the level: volume × ln(before / now) / days, volume m³.
 *
 * Salt readings 10 to 100 000 mg/L, 0.1 to 3650 days between them. The fill water is taken as free of salt. A reading
 * that rose shows no loss and is refused. Mass balance of a well mixed pool.
 */
export function waterLossFromSalt(volume: number, before: number, now: number, days: number): number | Failure {
  return (
    volumeOutside(volume) ??
    outside('salt_before', before, 10, 100_000) ??
    outside('salt', now, 10, before) ??
    outside('days_between', days, 0.1, 3_650) ??
    (1_000 * volume * Math.log(before / now)) / days
  )
}
