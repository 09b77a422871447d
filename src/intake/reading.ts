import { isProblem, type Problem, problem } from '../words/problem'
import type { Known } from './known'
import { canonical, type LabUnit, labUnit } from './labUnit'
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
      /** the laboratory marked it as estimated, or the reading lies outside what is plausible, or it is the mean of several */
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

/** Where a cell stands, for the sentence about it. */
export interface Place {
  readonly row: number
  readonly column: string
}

/** The reading of a cell; null where nothing was measured; a problem where it must be refused. */
export type CellReader = (text: string, place: Place) => LabReading | null | Problem

/** Reads the cells of one column: number, qualifier, a unit beside the number, canonical unit, accepted range. */
export function createCellReader(known: Known, unit: LabUnit | null, decimal: Understanding['decimal']): CellReader {
  const units = new Map<string, LabUnit | Problem>()
  const unitOf = (written: string): LabUnit | Problem | null => {
    if (written === '') return unit
    const found = units.get(written) ?? labUnit(written, known)
    if (units.size < 100) units.set(written, found)
    return found
  }
  return (text, place) => {
    if (known.choices !== undefined) return choice(text, known, place)
    const cell = readCell(text, decimal)
    if (cell.kind === 'missing') return null
    if (cell.kind === 'unreadable') return refused(cell.why, text, known, place, decimal)
    const own = unitOf(cell.unit)
    if (own === null || isProblem(own)) return refused('cell_unit', text, known, place, decimal)
    return cell.kind === 'value' ? measured(cell, own, known, text, place) : limited(cell, own, known, text, place)
  }
}

type Value = Extract<CellReading, { kind: 'value' }>
type Censored = Extract<CellReading, { kind: 'censored' }>

function measured(cell: Value, unit: LabUnit, known: Known, text: string, place: Place): LabReading | Problem {
  const value = canonical(cell.value, unit, known)
  if (isProblem(value)) return problem(value.code, [], { ...value.facts, ...place })
  if (outside(value, known.accept)) return outOfRange(text, value, known, place)
  const entered = unit.times === 1 ? cell.figures : String(cell.value * unit.times)
  const reading = { kind: 'value' as const, entered, unit: unit.code, canonical: value }
  if (outside(value, known.plausible)) return { ...reading, mark: 'unlikely' }
  return cell.estimated ? { ...reading, mark: 'estimated' } : reading
}

function limited(cell: Censored, unit: LabUnit, known: Known, text: string, place: Place): LabReading | Problem {
  const limit = cell.limit === null ? null : canonical(cell.limit, unit, known)
  if (isProblem(limit)) return problem(limit.code, [], { ...limit.facts, ...place })
  if (limit !== null && outside(limit, known.accept)) return outOfRange(text, limit, known, place)
  return { kind: 'censored', entered: text.trim(), unit: unit.code, sign: cell.sign, limit }
}

function choice(text: string, known: Known, place: Place): LabReading | null | Problem {
  const id = text.trim()
  if (id === '' || id === '-') return null
  if (known.choices?.includes(id) === true) return { kind: 'choice', id }
  return problem('not_a_choice', [], { ...place, found: id, quantity: known.name, accepted: known.choices ?? [] })
}

function outside(value: number, range: readonly [number, number] | undefined): boolean {
  return range !== undefined && (value < range[0] || value > range[1])
}

function outOfRange(text: string, value: number, known: Known, place: Place): Problem {
  const [min, max] = known.accept ?? [0, 0]
  return problem('out_of_range', [], {
    ...place,
    found: text.trim(),
    quantity: known.name,
    value,
    min,
    max,
    unit: known.unit,
  })
}

function refused(code: string, text: string, known: Known, place: Place, decimal: Understanding['decimal']): Problem {
  const found = text.length > 60 ? `${text.slice(0, 60)}…` : text.trim()
  return problem(code, [], { ...place, found, quantity: known.name, decimal: decimal ?? '' })
}
