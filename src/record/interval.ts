/** Within what a figure lies; `high` may be infinite. */
export interface Interval {
  readonly low: number
  readonly high: number
}

/** What both allow; null where they contradict each other. */
export function intersection(a: Interval, b: Interval): Interval | null {
  const low = Math.max(a.low, b.low)
  const high = Math.min(a.high, b.high)
  return low <= high ? { low, high } : null
}
