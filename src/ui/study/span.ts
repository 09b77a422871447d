import { convert } from '../../units/convert'
import { isProblem } from '../../words/problem'
import type { Row } from '../../worksheet/definition'

/** From, to; canonical. */
export type Span = readonly [number, number]

/** A span's ends are rounded to a power of ten of which it holds at least so many. */
const STEPS = 20

/** The span of an input that is worth looking at. */
export function usualSpan(row: Row | undefined, unit: string): Span {
  if (!row) return [0, 1]
  return inShort(row.range ?? ('accept' in row ? (row.plausible ?? row.accept) : [0, 1]), row, unit)
}

/**
 * The span whose ends a person would write in the unit that the row is shown in: 1 to 30 m³/h becomes 4 to 132 US gal/min.
 * An end that would leave what the row accepts stays as it is.
 */
export function inShort([from, to]: Span, row: Row, unit: string): Span {
  const [low, high] = [convert(from, row.unit, unit), convert(to, row.unit, unit)]
  if (unit === row.unit || isProblem(low) || isProblem(high) || !(high > low)) return [from, to]
  const step = 10 ** Math.floor(Math.log10((high - low) / STEPS))
  const [least, most] = 'accept' in row ? row.accept : [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY]
  const short = (end: number, otherwise: number) => {
    const canonical = convert(Math.round(end / step) * step, unit, row.unit)
    return isProblem(canonical) || canonical < least || canonical > most ? otherwise : canonical
  }
  return [short(low, from), short(high, to)]
}
