import type { Given } from '../engine/batch'

/** A volume that is given is known: low and high are it, unless they are given too. */
export function withVolumeInterval(given: Given): Given {
  const volume = given.get('volume')
  if (volume === undefined) return given
  return new Map([['volume_low', volume], ['volume_high', volume], ...given])
}
