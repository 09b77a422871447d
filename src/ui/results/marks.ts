import { ticks } from 'd3-array'

/** Round values between two others, about so many; none where the two are as good as one: the library has no answer there. */
export function marks(min: number, max: number, count: number): readonly number[] {
  return isSpan(min, max) ? ticks(min, max, count) : []
}

export function isSpan(min: number, max: number): boolean {
  return max - min > Math.max(1e-9 * Math.max(Math.abs(min), Math.abs(max)), 1e-200)
}
