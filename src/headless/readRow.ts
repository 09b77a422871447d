import type { Given } from '../engine/batch'
import type { Value } from '../functions/define'
import { readCell } from '../intake/numbers'
import type { CsvRecord } from '../intake/records'
import type { DecimalMark } from '../units/readNumber'
import { readUnit } from '../units/readUnit'
import { toCanonical } from '../units/toCanonical'
import { isProblem, type Problem, problem } from '../words/problem'
import type { Catalog } from '../worksheet/catalog'
import type { Row } from '../worksheet/definition'
import type { Column } from './header'

export interface ReadRow {
  readonly sample: string
  readonly date: string
  readonly given: Given
  /** `unlikely:ph`, `given:volume`, `censored:free_chlorine` */
  readonly notices: readonly string[]
}

export interface RowRules {
  readonly catalog: Catalog
  readonly columns: readonly Column[]
  readonly decimal: DecimalMark
  readonly censored: 'limit' | 'half' | 'zero' | null
  /** what the command line sets for every row */
  readonly set: Given
}

/** One row as a column for the engine; or why it is refused, one problem a cell. */
export function readRow(record: CsvRecord, rules: RowRules): ReadRow | readonly Problem[] {
  if (record.broken) return [problem('row_quotes', [`row ${record.row}`])]
  const { columns, catalog } = rules
  const given = new Map<string, Value>(rules.set)
  const notices: string[] = []
  const problems: Problem[] = []
  let sample = String(record.row)
  let date = ''
  if (record.cells.length > columns.length) {
    problems.push(
      problem('row_too_long', [`row ${record.row}`], { found: record.cells.length, expected: columns.length }),
    )
  }
  columns.forEach((column, i) => {
    const cell = (record.cells[i] ?? '').trim()
    if (cell === '') return
    if (column.kind === 'sample') sample = cell
    if (column.kind === 'date') date = cell
    if (column.kind !== 'quantity') return
    const row = catalog.quantities.get(column.name)?.row
    if (!row || isWorkedOutWord(row)) return
    const value = readValue(cell, column, row, rules, notices)
    if (value === null) return
    if (isProblem(value)) problems.push({ ...value, path: [`row ${record.row}: ${column.name}`] })
    else given.set(column.name, value)
  })
  if (problems.length > 0) return problems
  for (const [name, value] of given) {
    const row = catalog.quantities.get(name)?.row
    if (row && 'formula' in row) notices.push(`given:${name}`)
    if (row && 'plausible' in row && row.plausible && typeof value === 'number') {
      if (value < row.plausible[0] || value > row.plausible[1]) notices.push(`unlikely:${name}`)
    }
  }
  return { sample, date, given, notices }
}

function readValue(
  cell: string,
  { name, unit }: Extract<Column, { kind: 'quantity' }>,
  row: Row,
  { decimal, censored }: RowRules,
  notices: string[],
): Value | null | Problem {
  if (row.unit === 'choice') return readChoice(cell, row)
  const read = readCell(cell, decimal)
  if (read.kind === 'missing') return null
  if (read.kind === 'unreadable') return problem('cell_unreadable', [], { found: cell })
  let number: number | null | 'refuse'
  if (read.kind === 'censored') {
    if (censored === null) return problem('cell_censored', [], { found: cell })
    number = standIn(read.sign, read.limit, censored)
    if (number === 'refuse') return problem('cell_censored', [], { found: cell })
    notices.push(`censored:${name}`)
    if (number === null) return null
  } else number = read.value
  const from = read.unit === '' ? unit : readUnit(read.unit, row.unit, { profile: 'us', quantity: name })
  if (isProblem(from)) return problem('cell_unreadable', [], { found: cell })
  const value = toCanonical(number, from, row.unit, name)
  if (isProblem(value)) return value
  return outsideAccept(row, value) ?? value
}

/** A choice or a yes-or-no that the worksheets work out: our own table of all worksheets has such columns, and nobody gives one. */
export function isWorkedOutWord(row: Row | undefined): boolean {
  return row !== undefined && 'formula' in row && (row.unit === 'choice' || row.unit === 'truth')
}

/**
 * What stands in for a limit. A word without a figure (ND) is zero where zero was chosen, else not taken. A lower bound
 * can stand as its limit only: half of it, or nothing, would say that there is less.
 */
function standIn(sign: '<' | '>', limit: number | null, choice: 'limit' | 'half' | 'zero'): number | null | 'refuse' {
  if (sign === '>') return limit === null || choice !== 'limit' ? 'refuse' : limit
  if (choice === 'zero') return 0
  return limit === null || choice === 'limit' ? limit : limit / 2
}

export function readChoice(text: string, row: Row): string | Problem {
  const choices = 'choices' in row ? row.choices : []
  return choices.includes(text) ? text : problem('cell_choice', [], { found: text, accepted: choices })
}

export function outsideAccept(row: Row, value: number): Problem | null {
  if (!('accept' in row)) return null
  const [low, high] = row.accept
  return value < low || value > high ? problem('cell_outside', [], { found: value, low, high, unit: row.unit }) : null
}
