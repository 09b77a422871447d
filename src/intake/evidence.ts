import type { DecimalMark } from '../units/readNumber'
import { isProblem } from '../words/problem'
import { type DateOrder, ordersOf } from './dates'
import type { Known } from './known'
import { canonical, type LabUnit } from './labUnit'
import { decimalMark, numberIn, readCell } from './numbers'

/** What the cells say of the file's decimal mark: one mark, both, or only cells that can be read either way. */
export type DecimalEvidence = DecimalMark | 'mixed' | 'ambiguous' | 'none'

export interface Cells {
  readonly known: Known
  readonly unit: LabUnit | null
  readonly texts: readonly string[]
}

/** A habit shown by fewer cells than this is a slip of single cells, which are then refused, and no second habit of the file. */
const SLIPS = 0.1

/**
 * Decides the decimal mark for a whole file from the cells that leave no doubt. Where none does, a reading that would be
 * impossible with the mark as a thousands mark decides (a pH of 7412); and in a file that is cut by commas a point is a
 * decimal point.
 */
export function decimalEvidence(columns: readonly Cells[], delimiter: string): DecimalEvidence {
  const shown: Record<DecimalMark, number> = { '.': 0, ',': 0 }
  let open = false
  let pointed = false
  for (const { known, unit, texts } of columns) {
    if (known.choices !== undefined) continue
    for (const text of texts) {
      const written = numberIn(text)
      const mark = written === null ? null : decimalMark(written)
      if (written === null || mark === null) continue
      if (mark !== 'ambiguous') shown[mark]++
      else if (unit !== null && impossible(written.replace(/[.,]/g, ''), known, unit)) {
        shown[written.includes(',') ? ',' : '.']++
      } else if (delimiter === ',' && written.includes('.')) pointed = true
      else open = true
    }
  }
  const [most, least]: readonly DecimalMark[] = shown['.'] >= shown[','] ? ['.', ','] : [',', '.']
  if (most === undefined || least === undefined || shown[most] === 0) {
    return open ? 'ambiguous' : pointed ? '.' : 'none'
  }
  return shown[least] <= SLIPS * shown[most] ? most : 'mixed'
}

function impossible(digits: string, known: Known, unit: LabUnit): boolean {
  const value = canonical(Number(digits), unit, known)
  return isProblem(value) || (known.accept !== undefined && (value < known.accept[0] || value > known.accept[1]))
}

/**
 * The orders of day and month that the file's dates leave open: one where dates decide it, several where all can be read
 * either way, none where they contradict each other; null where no date is in question.
 */
export function dateEvidence(texts: readonly string[]): readonly DateOrder[] | null {
  const decided = new Map<DateOrder, number>()
  const open = new Set<DateOrder>()
  let dotted = true
  for (const text of texts) {
    const orders = ordersOf(text)
    const [only] = orders ?? []
    if (orders === null || only === undefined) continue
    dotted &&= /^\d{1,2}\./.test(text.trim())
    if (orders.length === 1) decided.set(only, (decided.get(only) ?? 0) + 1)
    else for (const order of orders) open.add(order)
  }
  const [first, second] = [...decided].sort(([, a], [, b]) => b - a)
  if (first !== undefined) return second === undefined || second[1] <= SLIPS * first[1] ? [first[0]] : []
  if (open.size === 0) return null
  return dotted ? ['dmy'] : [...open]
}

/**
 * Chooses among units that a heading leaves unsaid (the first is the canonical one): the canonical one where the readings
 * are likely in it and in no other; another only where the canonical one is impossible (84 is no temperature in °C) and
 * it alone is possible. Null where the readings leave it open.
 */
export function unitByReadings(
  units: readonly LabUnit[],
  known: Known,
  texts: readonly string[],
  decimal: DecimalMark | null,
): LabUnit | null {
  const [first, ...others] = units
  const values = numbersOf(texts, decimal)
  const accept = known.accept
  if (first === undefined || others.length === 0 || values.length === 0 || accept === undefined) return first ?? null
  const likely = known.plausible ?? accept
  const rivals = others.filter((unit) => share(values, unit, known, likely) >= 0.2)
  if (share(values, first, known, accept) < 0.5) {
    const possible = others.filter((unit) => share(values, unit, known, accept) >= 0.9)
    return possible.length === 1 ? (possible[0] ?? null) : null
  }
  return rivals.length === 0 ? first : null
}

/** The share of readings that lie in a range of the quantity when they are read in this unit. */
export function share(
  values: readonly number[],
  unit: LabUnit,
  known: Known,
  range: readonly [number, number],
): number {
  const inside = values.filter((value) => {
    const meant = canonical(value, unit, known)
    return !isProblem(meant) && meant >= range[0] && meant <= range[1]
  })
  return inside.length / values.length
}

/** The plain numbers among cells. */
export function numbersOf(texts: readonly string[], decimal: DecimalMark | null): readonly number[] {
  return texts.flatMap((text) => {
    const read = readCell(text, decimal)
    return read.kind === 'value' && read.unit === '' ? [read.value] : []
  })
}
