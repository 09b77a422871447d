import type { Failure } from './failure'
import { outside } from './outside'
import { volumeOutside } from './volumeOutside'

/** Hours in which the pump moves the pool's volume once: volume m³ / flow m³/h. Flow 0.01 to 10 000 m³/h. */
export function turnoverTime(volume: number, flow: number): number | Failure {
  return volumeOutside(volume) ?? outside('pump_flow', flow, 0.01, 10_000) ?? volume / flow
}

/** Pool volumes that the pump moves a day: flow m³/h × hours a day / volume m³. */
export function turnoversPerDay(volume: number, flow: number, hours: number): number | Failure {
  return (
    volumeOutside(volume) ??
    outside('pump_flow', flow, 0, 10_000) ??
    outside('pump_hours', hours, 0, 24) ??
    (flow * hours) / volume
  )
}

/**
 * Share (0 to 1) of a well mixed pool's water that has passed the filter at least once after `turnovers` volumes were
 * pumped: 1 - e^-n (Gage and Bidwell's law of purification by consecutive dilution, 1926).
 */
export function shareFiltered(turnovers: number): number | Failure {
  return outside('turnovers', turnovers, 0, 1_000) ?? -Math.expm1(-turnovers)
}
