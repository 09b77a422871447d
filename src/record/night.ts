import { cellOutputMeasured } from '../chemistry/electrolysis'
import { isFailure } from '../chemistry/failure'
import { outside } from '../chemistry/outside'
import { volumeOutside } from '../chemistry/volumeOutside'
import type { Interval } from './interval'

/** A night without sun: free chlorine at its ends, mg/L, its hours, and the cell's setting, 0 where it was off. */
export interface Night {
  readonly dusk: number
  readonly dawn: number
  readonly hours: number
  readonly setting: number
  /** free chlorine at the next dusk, and the hours that the cell ran between the two dusks, at the same setting */
  readonly nextDusk?: number
  readonly cellHours?: number
}

export interface Estimate extends Interval {
  readonly value: number
}

/** Why a night says nothing: the change is no larger than the tests' error, or the figures cannot be. */
export interface Refused {
  readonly refused: 'within_error' | 'impossible'
}

export function isRefused(says: Estimate | Refused): says is Refused {
  return 'refused' in says
}

const IMPOSSIBLE: Refused = { refused: 'impossible' }

export interface NightSays {
  /** g/h at full setting; what the water uses up in the dark is in it where a night with the cell off told that */
  readonly output: Estimate | Refused
  /** mg/L a day */
  readonly demand: Estimate | Refused | null
}

/**
 * What a night with the cell on says of the cell: (dawn - dusk + loss) × volume / (hours × setting), and, with the next dusk, of
 * the pool: chlorine made in the day less what was left of it. Both ends count each reading off by `error` mg/L.
 *
 * Without a known loss the output is the least that the cell made, and the demand is what the sun and bathers took beyond what the
 * water uses in the dark; the hours that follow from both together are right all the same while the cell runs as it did.
 * Refused where the rise is no larger than its error, and for figures that `cellOutputMeasured` refuses.
 * Mass balance. Common practice, no source.
 *
 * @param volume m³
 * @param loss mg/L an hour used up in the dark, from a night with the cell off; 0 where there was none
 */
export function nightSays(night: Night, volume: number, error: number, loss = 0): NightSays {
  const { dusk, dawn, hours, setting } = night
  const rise = dawn - dusk + loss * hours
  const middle = cellOutputMeasured(volume, dusk, dusk + Math.max(rise, -1), hours, setting)
  if (isFailure(middle)) return { output: IMPOSSIBLE, demand: null }
  if (rise <= 2 * error) return { output: { refused: 'within_error' }, demand: null }
  const off = (2 * error * volume) / (hours * setting)
  const output = { value: middle, low: middle - off, high: middle + off }
  return { output, demand: demandOf(night, volume, error, output) }
}

function demandOf(night: Night, volume: number, error: number, output: Estimate): Estimate | Refused | null {
  const { dusk, nextDusk, cellHours, setting } = night
  if (nextDusk === undefined || cellHours === undefined) return null
  const refused = outside('free_chlorine', nextDusk, 0, 50) ?? outside('pump_hours', cellHours, 0, 24)
  if (refused) return IMPOSSIBLE
  const made = (grams: number) => (grams * setting * cellHours) / volume
  const left = nextDusk - dusk
  const value = made(output.value) - left
  const high = made(output.high) - left + 2 * error
  if (high <= 0) return IMPOSSIBLE
  return { value: Math.max(0, value), low: Math.max(0, made(output.low) - left - 2 * error), high }
}

/**
 * What a night with the cell off says: mg/L an hour that the water uses up without sun. Chlorine that rose without a cell is
 * refused beyond the tests' error.
 */
export function darkLoss({ dusk, dawn, hours }: Night, error: number): Estimate | Refused {
  const refused =
    outside('free_chlorine_dusk', dusk, 0, 50) ??
    outside('free_chlorine_dawn', dawn, 0, Math.min(50, dusk + 2 * error)) ??
    outside('dark_hours', hours, 1, 24)
  if (refused) return IMPOSSIBLE
  const value = Math.max(0, dusk - dawn) / hours
  return { value, low: Math.max(0, dusk - dawn - 2 * error) / hours, high: (dusk - dawn + 2 * error) / hours }
}

/** Whether a volume can be reckoned with here. */
export function usableVolume(volume: number | undefined): volume is number {
  return volume !== undefined && volumeOutside(volume) === undefined
}
