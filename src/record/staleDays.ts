import { instant } from './instant'

/** Common practice, no source: chlorine and pH are read again every day or two, and no verdict on bathing outlives them. */
const FRESH = 2
const DAY = 86_400_000

/** How many days of the calendar old a test is, where that is too old to say that people may swim; else, or undated, null. */
export function staleDays(tested: string, at: Date): number | null {
  const then = instant(tested)
  if (Number.isNaN(then)) return null
  const midnight = (date: Date) => Date.UTC(date.getFullYear(), date.getMonth(), date.getDate())
  const days = Math.round((midnight(at) - midnight(new Date(then))) / DAY)
  return days > FRESH ? days : null
}
