import type { Failure } from './failure'
import { givenOutside, outside } from './outside'

/**
 * By how much, m³/h, the flow lies inside what the cell takes: the lesser of flow - least and most - flow; under 0 it lies
 * outside. Without a stated most, only the least counts. Flows 0 to 10 000 m³/h.
 */
export function flowMargin(flow: number, least: number, most: number | undefined): number | Failure {
  return (
    outside('pump_flow', flow, 0, 10_000) ??
    outside('minimum_cell_flow', least, 0, 10_000) ??
    givenOutside('maximum_cell_flow', most, least, 10_000) ??
    Math.min(flow - least, most === undefined ? Number.POSITIVE_INFINITY : most - flow)
  )
}

/**
 * Whether the cell may run, as far as flow and cold go: flow within what the cell takes, water at or over its cold limit (°C;
 * many controllers stop at 10 to 15). Hydrogen must be carried off: without flow never. Salt, pH and index are other checks.
 */
export function cellMayRun(
  flow: number,
  least: number,
  most: number | undefined,
  temperature: number,
  coldLimit: number,
): boolean | Failure {
  const margin = flowMargin(flow, least, most)
  if (typeof margin !== 'number') return margin
  return (
    outside('temperature', temperature, -5, 50) ??
    outside('cell_cold_limit', coldLimit, -5, 50) ??
    (margin >= 0 && flow > 0 && temperature >= coldLimit)
  )
}
