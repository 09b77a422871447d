import { normalQuantile } from './normalQuantile'

/**
 * How far a reading may be from the water. `rectangular`: anywhere within the half width, all values alike (JCGM 100:2008,
 * 4.3.7); `normal`: within it 95 times of 100. In the quantity's canonical unit.
 */
export interface Doubt {
  readonly quantity: string
  readonly value: number
  readonly half: number
  readonly distribution: 'rectangular' | 'normal'
  /** what is possible at all; a value beyond stands at the end */
  readonly least: number
  readonly most: number
}

/** 95 of 100 lie within so many standard deviations of the mean of a normal distribution. */
const NORMAL_95 = normalQuantile(0.975)

/** The value under which the water lies with this probability, 0 < share < 1. */
export function quantileOf({ value, half, distribution, least, most }: Doubt, share: number): number {
  const off = distribution === 'rectangular' ? 2 * share - 1 : normalQuantile(share) / NORMAL_95
  return Math.min(Math.max(value + off * half, least), most)
}

/** Both ends of what the reading may mean. */
export function endsOf({ value, half, least, most }: Doubt): readonly [low: number, high: number] {
  return [Math.max(value - half, Math.min(least, value)), Math.min(value + half, Math.max(most, value))]
}
