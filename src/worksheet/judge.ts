import type { Band } from './definition'

export type Side = 'below' | 'within' | 'above'

/** Where a value lies against its band; both ends belong to it. In the row's canonical unit. */
export function judge(value: number, { low, high }: Band): Side {
  if (low !== undefined && value < low) return 'below'
  return high !== undefined && value > high ? 'above' : 'within'
}

/** How far outside: negative below, positive above, 0 within. In the row's canonical unit. */
export function distance(value: number, { low, high }: Band): number {
  if (low !== undefined && value < low) return value - low
  return high !== undefined && value > high ? value - high : 0
}
