/** When something was, milliseconds since 1970; a date alone is the beginning of its day. NaN where there is no date. */
export function instant(date: string): number {
  return date === '' ? Number.NaN : new Date(date.includes('T') ? date : `${date}T00:00`).getTime()
}

const DAY = 86_400_000

/** Midnights between the two, by the calendar of this place: 0 is the same day. */
export function daysBetween(start: Date, time: Date): number {
  const midnight = (date: Date) => Date.UTC(date.getFullYear(), date.getMonth(), date.getDate())
  return Math.round((midnight(time) - midnight(start)) / DAY)
}

/** The day of a date, whatever its time. */
export function dayOf(date: string): string {
  return date.slice(0, 10)
}

/**
 * Whether something was after something else, so far as the dates tell: on the same day it is not known (null) unless both
 * have a time.
 */
export function isAfter(later: string, earlier: string): boolean | null {
  if (later === '' || earlier === '') return null
  const [day, other] = [dayOf(later), dayOf(earlier)]
  if (day !== other) return day > other
  return later.includes('T') && earlier.includes('T') ? instant(later) > instant(earlier) : null
}
