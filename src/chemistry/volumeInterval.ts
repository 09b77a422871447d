import { type Failure, fail, isFailure } from './failure'
import { outside } from './outside'
import { volumeFromSaltRise } from './volumeFromSaltRise'
import { volumeOutside } from './volumeOutside'

export interface VolumeBasis {
  /** m³, by a meter while filling */
  readonly measured: number | undefined
  /** m³, from the shape and depths */
  readonly byShape: number | undefined
  /** kg of salt, and mg/L as NaCl before and after it */
  readonly saltAdded: number | undefined
  readonly saltBefore: number | undefined
  readonly saltAfter: number | undefined
  /** mg/L, of the rise */
  readonly riseError: number
}

/** Shares by which a volume may be off; common practice, no source. */
export const METERED_ERROR = 0.02
export const SHAPE_ERROR = 0.1

/** mg/L by which a rise between two strip or meter readings may be off; common practice, no source. */
export const SALT_RISE_ERROR = 300

/**
 * Within what a pool's volume lies, m³: 2 % either way of a metered volume, else 10 % of one by shape, else what the salt
 * rise gives with its error added and taken away. A rise that is no larger than its error has no upper end
 * (`unreachable`); with none of the three the metered volume is named as missing.
 */
export function volumeInterval(basis: VolumeBasis): readonly [low: number | Failure, high: number | Failure] | Failure {
  const { measured, byShape, saltAdded, saltBefore, saltAfter, riseError } = basis
  if (measured !== undefined) return around('measured_volume', measured, METERED_ERROR)
  if (byShape !== undefined) return around('volume', byShape, SHAPE_ERROR)
  if (saltAdded === undefined) return fail('missing', 'measured_volume')
  if (saltBefore === undefined) return fail('missing', 'salt_before')
  if (saltAfter === undefined) return fail('missing', 'salt')
  const refused = outside('salt_rise_error', riseError, 0, 5_000)
  if (refused) return refused
  const middle = volumeFromSaltRise(saltAdded, saltBefore, saltAfter)
  if (isFailure(middle)) return middle
  const rise = saltAfter - saltBefore
  const high =
    rise > riseError ? (middle * rise) / (rise - riseError) : fail('unreachable', 'salt', { rise, error: riseError })
  return [(middle * rise) / (rise + riseError), high]
}

function around(quantity: string, volume: number, share: number): readonly [number, number] | Failure {
  return volumeOutside(volume, quantity) ?? [volume * (1 - share), volume * (1 + share)]
}
