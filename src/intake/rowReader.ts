import type { Problem } from '../words/problem'
import { type Aside, createAside } from './aside'
import { cellProblem } from './cellProblem'
import { readDate, withTime } from './dates'
import type { RowOutcome } from './outcome'
import { type CellReader, createCellReader } from './reading'
import type { CsvRecord } from './records'
import type { Role } from './roles'
import type { Column, Understanding } from './understanding'

/** Turns records into outcomes; one for each shape of file. */
export interface RowReader {
  push(records: readonly CsvRecord[]): RowOutcome[]
  end(): RowOutcome[]
  met(): number
}

/** A column with what reads its cells. */
export interface QuantityColumn {
  readonly column: Column
  readonly quantity: string
  readonly read: CellReader
}

/** The columns that hold quantities. One that is still asked about is no column to read. */
export function quantityColumns(columns: readonly Column[], understanding: Understanding): readonly QuantityColumn[] {
  return columns.flatMap((column) => {
    const known = understanding.known.find(({ name }) => name === column.quantity)
    if (known === undefined || (column.unit === null && known.choices === undefined)) return []
    return [{ column, quantity: known.name, read: createCellReader(known, column.unit, understanding.decimal) }]
  })
}

export function asideBy(understanding: Understanding): Aside {
  return createAside((role) => columnOf(understanding, role)?.index ?? -1)
}

export function columnOf(understanding: Understanding, role: Role): Column | undefined {
  return understanding.columns.find((column) => column.role === role)
}

export function cellAt(cells: readonly string[], column: Column | undefined): string {
  return column === undefined ? '' : (cells[column.index] ?? '').trim()
}

/** ISO date (and time) of a row; empty where it has none. */
export function dateOf(record: CsvRecord, understanding: Understanding, columns: DateColumns): string | Problem {
  const text = cellAt(record.cells, columns.date)
  const refused = (found: string, column: Column | undefined, code: string) =>
    cellProblem(code, record.row, column?.heading ?? '', found)
  if (text === '') return ''
  const date = readDate(text, understanding.dates)
  if (date.kind === 'missing') return ''
  if (date.kind === 'unreadable') return refused(text, columns.date, `lab_${date.why}`)
  const clock = cellAt(record.cells, columns.time)
  if (clock === '') return date.iso
  const timed = withTime(date.iso, clock)
  return timed.kind === 'date' ? timed.iso : refused(clock, columns.time, 'lab_not_a_time')
}

export interface DateColumns {
  readonly date: Column | undefined
  readonly time: Column | undefined
}

export function dateColumns(understanding: Understanding): DateColumns {
  return { date: columnOf(understanding, 'date'), time: columnOf(understanding, 'time') }
}

export function isBlank(cells: readonly string[]): boolean {
  return cells.every((cell) => cell === '' || cell.trim() === '')
}

export function refuse(record: CsvRecord, ...problems: readonly Problem[]): RowOutcome {
  return { kind: 'refused', row: record.row, problems, cells: record.cells }
}

/** What is wrong with a record before its cells are read: quotes that do not pair up, more cells than the header has. */
export function malformed(record: CsvRecord, width: number): Problem | null {
  if (record.broken === true) {
    return cellProblem('lab_broken_quotes', record.row, '', record.cells[0] ?? '')
  }
  const extra = record.cells.slice(width).find((cell) => cell.trim() !== '')
  if (extra === undefined) return null
  return cellProblem('lab_too_many_cells', record.row, '', extra, { cells: record.cells.length, most: width })
}

/** The last row above the data. */
export function lastHeaderRow({ headerRow, unitsRow }: Understanding): number {
  return unitsRow ?? headerRow
}
