import { daysBetween } from '../../record/instant'
import { say } from '../../words/say'
import { clockWords, weekdayWords } from '../desk/when'

const HOUR = 3_600_000

/** So many hours after the start. */
export function after(start: Date, hours: number): Date {
  return new Date(start.getTime() + hours * HOUR)
}

export function dayTitle(start: Date, day: number): string {
  const date = weekdayWords(new Date(start.getFullYear(), start.getMonth(), start.getDate() + day, 12))
  if (day === 0) return say('handout.today', { date })
  if (day === 1) return say('handout.tomorrow', { date })
  return say(day === 7 ? 'handout.week' : 'handout.later', { date, days: day })
}

/** A step starts by the clock at the earliest then. */
export function startWords(start: Date, hours: number): string {
  return say(hours === 0 ? 'handout.at' : 'handout.not_before', { clock: clockWords(after(start, hours)) })
}

/** Until when, by the clock, and by the day too: it is another one, or may be. */
export function untilWords(start: Date, hours: number): string {
  const end = after(start, hours)
  return say('handout.until', { clock: say('handout.clock_on', { clock: clockWords(end), date: weekdayWords(end) }) })
}

/** How long to wait, and until when by the clock; empty where there is nothing to wait for. */
export function waitWords(start: Date, at: number, hours: number): string {
  if (hours <= 0) return ''
  const end = after(start, at + hours)
  const same = daysBetween(after(start, at), end) === 0
  const clock = same ? clockWords(end) : say('handout.clock_on', { clock: clockWords(end), date: weekdayWords(end) })
  if (hours < 1) return say('handout.wait_minutes', { minutes: Math.round(hours * 60), clock })
  return hours < 48
    ? say('handout.wait_hours', { hours: Math.round(hours * 10) / 10, clock })
    : say('handout.wait_days', { days: Math.round(hours / 24), clock })
}
