import { locale } from '../../words/locale'

/** `2026-11-25T09:30`: the hour on the clock of this place, as a sample's date has it. */
export function localTime(now: Date): string {
  const two = (part: number) => String(part).padStart(2, '0')
  const day = `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`
  return `${day}T${two(now.getHours())}:${two(now.getMinutes())}`
}

/** `25 November 2026`, in the order of the reader's language. */
export function dayWords(day: Date): string {
  return written(day, { day: 'numeric', month: 'long', year: 'numeric' })
}

/** `Wednesday, 25 November` */
export function weekdayWords(day: Date): string {
  return written(day, { weekday: 'long', day: 'numeric', month: 'long' })
}

/** `9:30` */
export function clockWords(time: Date): string {
  return written(time, { hour: 'numeric', minute: '2-digit' })
}

function written(time: Date, options: Intl.DateTimeFormatOptions): string {
  return new Intl.DateTimeFormat(locale().tag, options).format(time)
}
