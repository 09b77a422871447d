import { locale } from '../../words/locale'

/** A figure in two halves, so that decimal points stand in one line down a column. */
export interface Figures {
  readonly whole: string
  /** with its point; empty for a whole number */
  readonly fraction: string
}

export function figures(text: string): Figures {
  const point = text.lastIndexOf(locale().decimal)
  return point < 0 ? { whole: text, fraction: '' } : { whole: text.slice(0, point), fraction: text.slice(point) }
}

/**
 * The decimals that a person wrote: `7.70` has two, `15,000` none. Null where the text is more than one plain number
 * (a fraction, feet and inches, an exponent).
 */
export function decimalsWritten(entered: string): number | null {
  const number = /^\s*[-+\u2212]?[\d,\s']*(?:\.(\d*))?\s*(?:[^\d\s./][^\d]*)?$/.exec(entered)
  return number ? (number[1]?.length ?? 0) : null
}
