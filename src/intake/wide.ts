import { isProblem, type Problem } from '../words/problem'
import { besideReadings } from './beside'
import { cellProblem } from './cellProblem'
import { createGrouper } from './grouper'
import { readHeading } from './heading'
import type { LabSample, RowOutcome } from './outcome'
import { qualified, resultText } from './qualifier'
import type { LabReading } from './reading'
import type { CsvRecord } from './records'
import {
  asideBy,
  cellAt,
  columnOf,
  dateColumns,
  dateOf,
  isBlank,
  lastHeaderRow,
  malformed,
  quantityColumns,
  type RowReader,
  refuse,
} from './rowReader'
import type { Column, Understanding } from './understanding'

/** What is kept as text with a sample. */
const NOTED: ReadonlySet<Column['role']> = new Set(['note', 'status', 'kind'])

/** One row a sample. */
export function wideReader(understanding: Understanding): RowReader {
  const known = new Map(understanding.known.map((one) => [one.name, one]))
  const quantityOf = (name: string) => {
    const meant = readHeading(name, known).meaning?.quantities ?? []
    return meant.length === 1 ? (meant[0] ?? null) : null
  }
  const columns = quantityColumns(understanding.columns, understanding).map((one) => ({
    ...one,
    ...besideReadings(one.column, understanding.columns, quantityOf),
  }))
  const notes = understanding.columns.filter(({ role, heading }) => NOTED.has(role) && heading !== '')
  const dates = dateColumns(understanding)
  const named = columnOf(understanding, 'sample') ?? columnOf(understanding, 'place')
  const place = columnOf(understanding, 'place')
  const under = lastHeaderRow(understanding)
  const width = understanding.columns.length
  const aside = asideBy(understanding)
  const grouper = createGrouper(understanding)
  let met = 0

  function read(record: CsvRecord): RowOutcome[] {
    const { row, cells } = record
    if (isBlank(cells)) return [{ kind: 'skipped', row, rule: 'blank' }]
    const wrong = malformed(record, width)
    if (wrong !== null) return [refuse(record, wrong)]
    const set = aside(cells)
    if (set !== null) return [{ kind: 'skipped', row, rule: set }]
    const readings: Record<string, LabReading> = {}
    const problems: Problem[] = []
    let filled = 0
    let same = 0
    for (const { column, quantity, read: reader, qualifier, limit } of columns) {
      const says = qualifier === undefined ? 'plain' : qualified(cellAt(cells, qualifier), false)
      const bare = cells[column.index] ?? ''
      const text = says === 'plain' ? bare : resultText(bare, says, cellAt(cells, limit))
      if (text === '' || says === 'missing') continue
      if (says === 'unknown') {
        filled++
        problems.push(cellProblem('lab_unknown_qualifier', row, column.heading, cellAt(cells, qualifier)))
        continue
      }
      const reading = reader(text, row, column.heading)
      if (reading === null) continue
      filled++
      if (isProblem(reading)) {
        problems.push(reading)
        if (text.trim() === column.heading) same++
      } else readings[quantity] = reading
    }
    if (filled === 0) return [{ kind: 'skipped', row, rule: 'nothing_measured' }]
    if (same === filled) return [{ kind: 'skipped', row, rule: 'header_again' }]
    const date = dateOf(record, understanding, dates)
    if (isProblem(date)) problems.push(date)
    if (problems.length > 0 || isProblem(date)) return [refuse(record, ...problems)]
    const texts: Record<string, string> = Object.create(null)
    for (const { heading, index } of notes) {
      const text = cells[index]?.trim() ?? ''
      if (text !== '') texts[heading] = text
    }
    const name = unguarded(cellAt(cells, named))
    if (place !== undefined && place !== named && cellAt(cells, place) !== '')
      texts[place.heading] = cellAt(cells, place)
    const sample: LabSample = { name, date, readings, notes: texts }
    return grouper.whole(record, sample)
  }

  return {
    push(records) {
      const out: RowOutcome[] = []
      for (const record of records) {
        if (record.row <= under) continue
        met++
        for (const outcome of read(record)) out.push(outcome)
      }
      return out
    },
    end: grouper.end,
    met: () => met,
  }
}

/** Spreadsheets show a text that begins like a formula behind an apostrophe; it is no part of the name. */
function unguarded(name: string): string {
  return /^'[=+\-@]/.test(name) ? name.slice(1) : name
}
