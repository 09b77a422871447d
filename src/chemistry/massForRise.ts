import type { Failure } from './failure'
import { outside } from './outside'
import { volumeOutside } from './volumeOutside'

/**
 * Mass, kg, of a dry product that raises a dissolved quantity from `now` to `wanted` (mg/L) in `volume` m³:
 * max(0, wanted - now) × volume / 1000 / purity. 0 where the water already has as much.
 *
 * For what dissolves as itself (salt, cyanuric acid). `quantity` names the reading in a failure; readings to `most` mg/L,
 * purity 0.05 to 1. Mass balance; the product's own volume is neglected.
 */
export function massForRise(
  quantity: string,
  volume: number,
  now: number,
  wanted: number,
  purity: number,
  most: number,
): number | Failure {
  return (
    volumeOutside(volume) ??
    outside(quantity, now, 0, most) ??
    outside(`target_${quantity}`, wanted, 0, most) ??
    outside(`${quantity}_purity`, purity, 0.05, 1) ??
    (Math.max(0, wanted - now) * volume) / 1_000 / purity
  )
}

/** What `mass` kg of that product makes of `now` mg/L in `volume` m³: now + 1000 × mass × purity / volume, mg/L. */
export function concentrationAfterMass(
  quantity: string,
  volume: number,
  now: number,
  mass: number,
  purity: number,
  most: number,
): number | Failure {
  return (
    volumeOutside(volume) ??
    outside(quantity, now, 0, most) ??
    outside(`${quantity}_mass`, mass, 0, 1_000_000) ??
    outside(`${quantity}_purity`, purity, 0.05, 1) ??
    now + (1_000 * mass * purity) / volume
  )
}
