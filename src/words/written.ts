import { locale } from './locale'

/** A number as the reader writes it, with a true minus sign and groups of three from 10 000 up; for quantities with a unit `formatValue` knows the places. */
export function numberText(value: number, options: Intl.NumberFormatOptions = {}): string {
  return new Intl.NumberFormat(locale().tag, { useGrouping: 'min2', ...options }).format(value).replace('-', '−')
}

/** A time (milliseconds since 1970, or an ISO text) as a day, with or without the hour; as it stands where it is no time. */
export function timeText(time: number | string, precision: 'day' | 'minute' = 'minute'): string {
  const date = new Date(time)
  if (Number.isNaN(date.getTime())) return String(time)
  const hour = precision === 'minute' ? ({ timeStyle: 'short' } as const) : {}
  return new Intl.DateTimeFormat(locale().tag, { dateStyle: 'medium', ...hour }).format(date)
}
