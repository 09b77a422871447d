import type { Failure } from './failure'
import { outside } from './outside'
import { volumeOutside } from './volumeOutside'

/**
 * By how much, mg/L, the water that makes up for evaporation raises what it carries itself: evaporation takes none of it out.
 * Volume m³; evaporation 0 to 100 000 L/day, over 0.1 to 3650 days; fill water 0 to 40 000 mg/L. Mass balance, level kept.
 */
export function makeUpRise(volume: number, evaporation: number, days: number, fill: number): number | Failure {
  return (
    volumeOutside(volume) ??
    outside('evaporation', evaporation, 0, 100_000) ??
    outside('days', days, 0.1, 3_650) ??
    outside('fill_total_alkalinity', fill, 0, 40_000) ??
    (evaporation * days * fill) / (1_000 * volume)
  )
}
