import { daysBetween, instant } from './instant'

/** Common practice, no source: chlorine and pH are read again every day or two, and no verdict on bathing outlives them. */
const FRESH = 2

/** How many days of the calendar old a test is, where that is too old to say that people may swim; else, or undated, null. */
export function staleDays(tested: string, at: Date): number | null {
  const days = daysBetween(new Date(instant(tested)), at)
  return days > FRESH ? days : null
}
