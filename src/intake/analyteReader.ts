import { answerFor } from './answerFor'
import { analyteKey } from './layout'
import { matchAnalyte } from './matchAnalyte'
import { type CellReader, createCellReader } from './reading'
import type { Understanding } from './understanding'

/** What to do with the results of one analyte. */
export type Analyte =
  | { readonly kind: 'quantity'; readonly quantity: string; readonly read: CellReader }
  | { readonly kind: 'other' }
  /** it can be understood two ways and came up after the part of the file by which questions are asked */
  | { readonly kind: 'unanswered'; readonly choices: readonly string[] }

/** Finds the analyte that a name and a unit stand for, those of the file's first part as they were understood there. */
export function createAnalytes(understanding: Understanding): (heading: string, unit: string, row: number) => Analyte {
  const known = new Map(understanding.known.map((one) => [one.name, one]))
  const reader = (quantity: string, unit: Parameters<typeof createCellReader>[1]): Analyte => {
    const one = known.get(quantity)
    if (one === undefined) return { kind: 'other' }
    return { kind: 'quantity', quantity, read: createCellReader(one, unit, understanding.decimal) }
  }
  const seen = new Map<string, Analyte>()
  for (const { heading, unitText, role, quantity, unit } of understanding.analytes) {
    const found: Analyte = role === 'quantity' && quantity !== null ? reader(quantity, unit) : { kind: 'other' }
    seen.set(analyteKey(heading, unitText ?? ''), found)
  }
  const given = new Map<string, readonly string[]>()
  for (const { heading, unitText } of understanding.analytes) {
    if (unitText !== null) given.set(heading, [...(given.get(heading) ?? []), unitText])
  }
  return (heading, text, row) => {
    const [only, other] = given.get(heading) ?? []
    const asWritten = seen.get(analyteKey(heading, text))
    if (asWritten !== undefined) return asWritten
    const unit = text === '' && only !== undefined && other === undefined ? only : text
    const key = analyteKey(heading, unit)
    const before = seen.get(key)
    if (before !== undefined) return before
    const beside = { ...understanding.beside, unit: unit === '' ? null : unit }
    const { column, question, units } = matchAnalyte(
      row,
      heading,
      known,
      beside,
      answerFor(understanding.answers, heading),
    )
    const open = question?.choices ?? (units.length > 1 ? units.map(({ code }) => code) : null)
    const found: Analyte =
      open !== null
        ? { kind: 'unanswered', choices: open }
        : column.quantity === null
          ? { kind: 'other' }
          : reader(column.quantity, column.unit)
    if (seen.size < 10_000) seen.set(key, found)
    return found
  }
}
