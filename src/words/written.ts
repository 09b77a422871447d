import { locale } from './locale'

/** A number as the reader writes it, with a true minus sign; for quantities with a unit `formatValue` knows the places. */
export function numberText(value: number, options: Intl.NumberFormatOptions = {}): string {
  return new Intl.NumberFormat(locale().tag, options).format(value).replace('-', '−')
}

/** A time (milliseconds since 1970, or an ISO text) as a day, with or without the hour; as it stands where it is no time. */
export function timeText(time: number | string, precision: 'day' | 'minute' = 'minute'): string {
  const date = new Date(time)
  if (Number.isNaN(date.getTime())) return String(time)
  const hour = precision === 'minute' ? ({ timeStyle: 'short' } as const) : {}
  return new Intl.DateTimeFormat(locale().tag, { dateStyle: 'medium', ...hour }).format(date)
}
