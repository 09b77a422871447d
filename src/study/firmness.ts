import type { Band } from '../worksheet/definition'

/** Ends of the band that lie inside the interval: whether the value is on the one side or the other, the test cannot tell. */
export function openEnds(
  [low, high]: readonly [low: number, high: number],
  band: Pick<Band, 'low' | 'high'>,
): readonly number[] {
  return [band.low, band.high].filter((end) => end !== undefined && low < end && end < high) as readonly number[]
}
