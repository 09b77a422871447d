import { unit as unitOfCode } from '../units/unit'
import { isProblem, type Problem } from '../words/problem'
import { cellProblem } from './cellProblem'
import type { Known } from './known'
import { canonicalOf, type LabUnit, labUnit } from './labUnit'
import { isLikely, likelyRange } from './likely'
import { type CellReading, readCell } from './numbers'
import type { Understanding } from './understanding'

/** A reading of a sample. What was not measured has no entry. */
export type LabReading =
  | {
      readonly kind: 'value'
      /** the figures as the file has them, point for decimals, in `unit` */
      readonly entered: string
      readonly unit: string
      readonly canonical: number
      /** the laboratory marked it as estimated, or it lies outside what is plausible, or it is the mean of several */
      readonly mark?: 'estimated' | 'unlikely' | 'mean'
    }
  /** below or above what the method can tell; `limit` in the canonical unit, null where the file has only a word for it */
  | {
      readonly kind: 'censored'
      readonly entered: string
      readonly unit: string
      readonly sign: '<' | '>'
      readonly limit: number | null
    }
  | { readonly kind: 'choice'; readonly id: string }

/** The reading of a cell; null where nothing was measured; a problem where it must be refused. */
export type CellReader = (text: string, row: number, column: string) => LabReading | null | Problem

/** Reads the cells of one column: number, qualifier, a unit beside the number, canonical unit, accepted range. */
export function createCellReader(known: Known, unit: LabUnit | null, decimal: Understanding['decimal']): CellReader {
  const units = new Map<string, LabUnit | Problem>()
  const ownUnit = unit === null ? null : canonicalOf(unit, known)
  const unitOf = (written: string): LabUnit | Problem | null => {
    if (written === '') return unit
    const found = units.get(written) ?? labUnit(written, known)
    if (units.size < 100) units.set(written, found)
    return found
  }
  const symbol = unitOfCode(known.unit)?.symbol ?? known.unit
  const [low, high] = known.accept ?? [-Infinity, Infinity]
  const likely = known.plausible === undefined ? undefined : likelyRange(known)

  function refused(code: string, text: string, row: number, column: string): Problem {
    return cellProblem(code, row, column, text, {
      quantity: known.name,
      decimal: decimal ?? '',
      min: low,
      max: high,
      unit: symbol,
    })
  }

  function choice(text: string, row: number, column: string): LabReading | null | Problem {
    const id = text.trim()
    if (id === '' || id === '-') return null
    if (known.choices?.includes(id) === true) return { kind: 'choice', id }
    return cellProblem('lab_not_a_choice', row, column, id, { quantity: known.name, accepted: known.choices ?? [] })
  }

  function inUnit(cell: Measured, own: LabUnit, text: string, row: number, column: string): LabReading | Problem {
    const number = cell.kind === 'value' ? cell.value : cell.limit
    const into = own === unit && ownUnit !== null ? ownUnit : canonicalOf(own, known)
    const value = number === null ? null : into(number)
    if (isProblem(value)) return refused('lab_cell_unit', text, row, column)
    if (value !== null && (value < low || value > high)) return refused('lab_out_of_range', text, row, column)
    if (cell.kind === 'censored' || value === null) {
      return {
        kind: 'censored',
        entered: text.trim(),
        unit: own.code,
        sign: cell.kind === 'censored' ? cell.sign : '<',
        limit: value,
      }
    }
    const entered = own.times === 1 ? cell.figures : String(cell.value * own.times)
    if (likely !== undefined && !isLikely(value, known, likely))
      return { kind: 'value', entered, unit: own.code, canonical: value, mark: 'unlikely' }
    if (cell.estimated) return { kind: 'value', entered, unit: own.code, canonical: value, mark: 'estimated' }
    return { kind: 'value', entered, unit: own.code, canonical: value }
  }

  return (text, row, column) => {
    if (known.choices !== undefined) return choice(text, row, column)
    const cell = readCell(text, decimal)
    if (cell.kind === 'missing') return null
    if (cell.kind === 'unreadable') return refused(`lab_${cell.why}`, text, row, column)
    const own = unitOf(cell.unit)
    if (own === null || isProblem(own)) return refused('lab_cell_unit', text, row, column)
    return inUnit(cell, own, text, row, column)
  }
}

type Measured = Extract<CellReading, { kind: 'value' | 'censored' }>
