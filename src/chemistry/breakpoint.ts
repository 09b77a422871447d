import type { Failure } from './failure'
import { outside } from './outside'
import { volumeOutside } from './volumeOutside'

/**
 * Chlorine, mg/L as Cl2, that takes combined chlorine (mg/L as Cl2) and ammonia (mg/L as N) to the breakpoint:
 * 0.5 × combined + 7.6 × ammonia. Stoichiometric: 2 NH3 + 3 Cl2 = N2 (7.593 by mass), of which monochloramine already
 * has two of three parts. In practice 10 to 15 mg a mg of N are used up; ten times combined chlorine is no dose.
 * Wisconsin DNR, The Secrets of Breakpoint Chlorination; Applications of Environmental Aquatic Chemistry, ch. 4, p. 143.
 */
export function breakpointDose(combined: number, ammonia: number): number | Failure {
  return (
    outside('combined_chlorine', combined, 0, 50) ??
    outside('ammonia', ammonia, 0, 50) ??
    0.5 * combined + 7.6 * ammonia
  )
}

/** Chlorine, mg/L as Cl2, that `bathers` use up in `volume` m³ at `each` g of Cl2 (0 to 50). */
export function batherDemand(bathers: number, volume: number, each: number): number | Failure {
  return (
    outside('bathers', bathers, 0, 100_000) ??
    volumeOutside(volume) ??
    outside('chlorine_per_bather', each, 0, 50) ??
    (bathers * each) / volume
  )
}
