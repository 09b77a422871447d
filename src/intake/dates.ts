/** Order of day, month and year where the parts are numbers. */
export type DateOrder = 'dmy' | 'mdy' | 'ymd'

export type DateReading =
  /** ISO 8601: `2026-07-14`, `2026-07-14T09:30`, with seconds and zone where the file gives them */
  | { readonly kind: 'date'; readonly iso: string }
  | { readonly kind: 'missing' }
  | { readonly kind: 'unreadable'; readonly why: 'not_a_date' | 'ambiguous_date' }

const NOT_A_DATE: DateReading = { kind: 'unreadable', why: 'not_a_date' }

/** First three letters of month names, without accents, in English, German, French and Spanish; four where three are shared. */
const MONTHS: ReadonlyMap<string, number> = new Map(
  [
    'jan ene janv',
    'feb fev fevr',
    'mar mrz marz mars maer',
    'apr avr abr avri',
    'may mai',
    'jun juin',
    'jul juil',
    'aug aou ago aout',
    'sep set sept',
    'oct okt',
    'nov',
    'dec dez dic',
  ].flatMap((names, i) => names.split(' ').map((name) => [name, i + 1] as const)),
)

const TIME =
  /^(?:[T ,]|um|at|à)*(\d{1,2})[:h](\d{2})(?::(\d{2})(?:[.,]\d+)?)?\s*(am|pm|a\.m\.|p\.m\.)?(?:\s*uhr)?\s*(z|utc|gmt|[+-]\d{2}:?\d{2})?$/i
const ISO = /^(\d{4})-(\d{1,2})-(\d{1,2})(?=$|[T\s])(.*)$/
const NUMBERS = /^(\d{1,4})([-/. ])\s?(\d{1,2})\2\s?(\d{1,4})(?=$|[T\s,])(.*)$/
const COMPACT = /^(\d{4})(\d{2})(\d{2})(?:T?(\d{2})(\d{2})(\d{2})?)?$/
const DAY_MONTH =
  /^(?:\p{L}{2,10}[.,]?\s+)?(\d{1,2})\.?[\s-]*(?:de\s+)?(\p{L}{3,10})\.?,?[\s-]*(?:de\s+)?(\d{4}|\d{2})(?=$|[T\s,])(.*)$/u
const MONTH_DAY = /^(?:\p{L}{2,10}[.,]?\s+)?(\p{L}{3,10})\.?\s+(\d{1,2})(?:st|nd|rd|th)?,?\s+(\d{4})(?=$|[T\s,])(.*)$/u
const SERIAL = /^(\d{5})(?:[.,](\d+))?$/

/**
 * Reads a date. `order` is the file's, or null while nothing has told; then a date that can be read two ways says
 * 'ambiguous_date'. With points between the parts it is day, month, year unless the file shows otherwise (DIN 5008;
 * nobody's habit is month.day.year). A bare number of five digits is a spreadsheet's day count (1900 system).
 */
export function readDate(cell: string, order: DateOrder | null): DateReading {
  const text = cell.trim()
  if (/^(?:[-–—.\s]*|n\/?a|null|none|unknown|unbekannt)$/i.test(text)) return { kind: 'missing' }
  if (text.length > 60) return NOT_A_DATE
  const iso = ISO.exec(text)
  if (iso !== null) return at(iso[1], iso[2], iso[3], iso[4])
  const parts = NUMBERS.exec(text)
  if (parts !== null) return numeric(parts, order)
  const compact = COMPACT.exec(text)
  if (compact !== null) {
    const [, y, m, d, hour, minute = '00', second] = compact
    const time = hour === undefined ? '' : `${hour}:${minute}${second === undefined ? '' : `:${second}`}`
    return at(y, m, d, time)
  }
  const named = DAY_MONTH.exec(text)
  if (named !== null) return at(named[3], month(named[2]), named[1], named[4])
  const english = MONTH_DAY.exec(text)
  if (english !== null) return at(english[3], month(english[1]), english[2], english[4])
  return serial(text)
}

/** The orders that a date allows; null where it is no date of three numbers, or its order makes no difference. */
export function ordersOf(cell: string): readonly DateOrder[] | null {
  const text = cell.trim()
  const parts = ISO.test(text) ? null : NUMBERS.exec(text)
  if (parts === null) return null
  const [, a = '', , b = '', c = ''] = parts
  if (a.length > 2 || (a === b && c.length > 2)) return null
  if (c.length === 3) return []
  const possible = (['dmy', 'mdy', 'ymd'] as const).filter((order) => {
    if (order === 'ymd' && c.length > 2) return false
    const [y, m, d] = arranged(a, b, c, order)
    return isDay(year(y), Number(m), Number(d))
  })
  // two-digit years first are written with a dash where they are written at all
  return parts[2] === '-' || possible.length < 2 ? possible : possible.filter((order) => order !== 'ymd')
}

/** A time of day for a date that has none: `2026-07-14` and `9:30 PM` give `2026-07-14T21:30`. */
export function withTime(iso: string, cell: string): DateReading {
  const text = cell.trim()
  if (/^[-–—.\s]*$/.test(text) || iso.includes('T')) return { kind: 'date', iso }
  const fraction = /^0?[.,](\d+)$/.exec(text)
  return at(
    iso.slice(0, 4),
    iso.slice(5, 7),
    iso.slice(8, 10),
    fraction === null ? text : clock(Number(`0.${fraction[1]}`)),
  )
}

function numeric(parts: RegExpExecArray, order: DateOrder | null): DateReading {
  const [text, a = '', mark, b = '', c = '', rest = ''] = parts
  const possible = ordersOf(text) ?? [a.length > 2 ? 'ymd' : 'dmy']
  if (possible.length === 0) return NOT_A_DATE
  let chosen = order
  if (a.length > 2) chosen = 'ymd'
  else if (chosen === null || (chosen === 'ymd' && c.length > 2)) {
    const [only, other] = possible
    if (other === undefined) chosen = only ?? null
    else if (mark === '.') chosen = 'dmy'
  }
  if (chosen === null || (chosen === 'ymd' && c.length > 2)) return { kind: 'unreadable', why: 'ambiguous_date' }
  const [y, m, d] = arranged(a, b, c, chosen)
  return at(y, m, d, rest)
}

function arranged(a: string, b: string, c: string, order: DateOrder): readonly [string, string, string] {
  return order === 'ymd' ? [a, b, c] : order === 'dmy' ? [c, b, a] : [c, a, b]
}

function at(y = '', m = '', d = '', rest = ''): DateReading {
  const [yy, mm, dd] = [year(y), Number(m), Number(d)]
  if (!isDay(yy, mm, dd)) return NOT_A_DATE
  const day = `${String(yy).padStart(4, '0')}-${two(mm)}-${two(dd)}`
  if (rest.trim() === '') return { kind: 'date', iso: day }
  const [found, hour = '', minute = '', second, half, zone] = TIME.exec(rest.trim()) ?? []
  if (found === undefined) return NOT_A_DATE
  let hours = Number(hour)
  if (half !== undefined && (hours < 1 || hours > 12)) return NOT_A_DATE
  if (half !== undefined) hours = (hours % 12) + (/^p/i.test(half) ? 12 : 0)
  if (hours > 23 || Number(minute) > 59 || Number(second ?? 0) > 59) return NOT_A_DATE
  const away = zone === undefined ? '' : /^[+-]/.test(zone) ? zone.replace(/(\d\d):?(\d\d)$/, '$1:$2') : 'Z'
  return { kind: 'date', iso: `${day}T${two(hours)}:${minute}${second === undefined ? '' : `:${second}`}${away}` }
}

/** Two digits: 69 to 99 are of the last century, as POSIX `strptime` reads `%y`. */
function year(text: string): number {
  const n = Number(text)
  return text.length > 2 ? n : n < 69 ? 2000 + n : 1900 + n
}

function isDay(y: number, m: number, d: number): boolean {
  return y >= 1900 && y < 2200 && m >= 1 && m <= 12 && d >= 1 && d <= new Date(Date.UTC(y, m, 0)).getUTCDate()
}

function month(name = ''): string {
  const plain = name.normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase()
  return String(MONTHS.get(plain.slice(0, 4)) ?? MONTHS.get(plain.slice(0, 3)) ?? 0)
}

/** Day 1 is 1900-01-01 and a 29 February 1900 is counted, so that from March 1900 on day 0 is 1899-12-30. */
function serial(text: string): DateReading {
  const found = SERIAL.exec(text)
  if (found === null) return NOT_A_DATE
  const day = new Date(Date.UTC(1899, 11, 30) + Number(found[1]) * 86_400_000)
  const rest = found[2] === undefined ? '' : clock(Number(`0.${found[2]}`))
  return at(String(day.getUTCFullYear()), String(day.getUTCMonth() + 1), String(day.getUTCDate()), rest)
}

function clock(fraction: number): string {
  const minutes = Math.min(1439, Math.round(fraction * 1440))
  return `${Math.floor(minutes / 60)}:${two(minutes % 60)}`
}

function two(n: number): string {
  return String(n).padStart(2, '0')
}
