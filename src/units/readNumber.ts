import { foldText } from './fold'

export type DecimalMark = '.' | ','

export interface WrittenNumber {
  readonly value: number
  /** the figures as they were written, with a point for decimals and without grouping marks */
  readonly figures: string
}

/** A number at the start of a text, and what follows it. */
export interface Leading extends WrittenNumber {
  readonly fraction: boolean
  readonly rest: string
}

// Grouping: groups of three after a first group that is not 0, one mark throughout, never the decimal mark.
const NUMBER: Readonly<Record<DecimalMark, RegExp>> = {
  '.': /^([+-]?) ?((?:[1-9]\d{0,2}([ ,'])\d{3}(?:\3\d{3})*(?!\d)|\d+)?(?:\.\d*)?)(e[+-]?\d{1,3})?/i,
  ',': /^([+-]?) ?((?:[1-9]\d{0,2}([ .'])\d{3}(?:\3\d{3})*(?!\d)|\d+)?(?:,\d*)?)(e[+-]?\d{1,3})?/i,
}
// A mixed number keeps to small denominators: `1 200/300` could also be a grouped 1200.
const FRACTION = /^([+-]?) ?(?:(\d{1,5}) ([1-9]\d?)|(\d{1,6}))\/([1-9]\d{0,5})(?![\d.,/])/

/** The number that a folded text starts with; null where it starts with none, or with one that isn't well formed. */
export function leadingNumber(text: string, decimal: DecimalMark, fractions: boolean): Leading | null {
  return (fractions ? leadingFraction(text) : null) ?? leadingDecimal(text, decimal)
}

function leadingFraction(text: string): Leading | null {
  const [found, sign, whole, part, over = part, under] = FRACTION.exec(text) ?? []
  if (found === undefined || (whole !== undefined && Number(over) >= Number(under))) return null
  const size = Number(whole ?? 0) + Number(over) / Number(under)
  const minus = sign === '-' ? '-' : ''
  const figures = `${minus}${whole === undefined ? '' : `${whole} `}${over}/${under}`
  return { value: minus === '' ? size : -size, figures, fraction: true, rest: text.slice(found.length) }
}

function leadingDecimal(text: string, decimal: DecimalMark): Leading | null {
  const [found = '', sign = '', digits = '', group, exponent = ''] = NUMBER[decimal].exec(text) ?? []
  const rest = text.slice(found.length)
  if (!/\d/.test(digits) || /^[\d.,]/.test(rest)) return null
  const plain = (group === undefined ? digits : digits.replaceAll(group, '')).replace(',', '.').replace(/\.$/, '')
  const figures = `${sign === '-' ? '-' : ''}${plain}${exponent}`
  return { value: Number(figures), figures, fraction: false, rest }
}

/**
 * A whole text as a number: grouping marks in their places, a power of ten, any kind of minus sign. Null for anything
 * else, an unbounded number included.
 */
export function readNumber(text: string, decimal: DecimalMark): WrittenNumber | null {
  const number = leadingDecimal(foldText(text), decimal)
  if (number === null || number.rest !== '' || !Number.isFinite(number.value)) return null
  return { value: number.value, figures: number.figures }
}
