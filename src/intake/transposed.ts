import { isProblem, type Problem } from '../words/problem'
import { createAnalytes } from './analyteReader'
import { cellProblem } from './cellProblem'
import { createCombine, type Gathered } from './combine'
import { readDate } from './dates'
import { isBesideSamples, isRejected } from './notASample'
import type { LabSample, RowOutcome } from './outcome'
import type { CsvRecord } from './records'
import { ROLES } from './roles'
import { isBlank, type RowReader } from './rowReader'
import { spelling } from './spelling'
import type { Understanding } from './understanding'

/**
 * Analytes down, samples across: each column is counted as a row, and once more for each time that its analytes come again
 * and are kept. The file is small (few analytes), so it is read whole; a
 * record with quotes that do not pair up is an analyte that nobody can read, and refuses all samples.
 */
export function transposedReader(understanding: Understanding): RowReader {
  const { labels, unitColumn, firstSample } = understanding.across
  const keep = (understanding.answers.replicates ?? 'keep') === 'keep'
  const combine = createCombine(understanding)
  const records: CsvRecord[] = []
  let met = 0

  function read(index: number, lines: readonly Line[]): RowOutcome[] {
    const row = index + 1
    const turns: Gathered[] = [{ readings: {}, counts: {} }]
    const notes: Record<string, string> = Object.create(null)
    const problems: Problem[] = []
    let [name, date] = ['', '']
    let rejected = false
    for (const line of lines) {
      const text = (line.record.cells[index] ?? '').trim()
      const place = name === '' ? line.heading : `${name}, ${line.heading}`
      if (line.record.broken === true)
        problems.push(cellProblem('lab_broken_quotes', line.record.row, '', line.record.cells[0] ?? ''))
      else if (line.kind === 'name') name = text
      else if (line.kind === 'status') rejected = isRejected(text)
      else if (line.kind === 'date') {
        const found = readDate(text, understanding.dates)
        if (found.kind === 'date') date = found.iso
        if (found.kind === 'unreadable') problems.push(cellProblem(`lab_${found.why}`, line.record.row, place, text))
      } else if (text !== '') {
        const { analyte } = line
        if (analyte.kind === 'other')
          notes[line.heading] = notes[line.heading] === undefined ? text : `${notes[line.heading]}; ${text}`
        else if (analyte.kind === 'unanswered')
          problems.push(cellProblem('lab_unanswered', line.record.row, place, text, { choices: analyte.choices }))
        else {
          const reading = analyte.read(text, line.record.row, place)
          if (isProblem(reading)) problems.push(reading)
          else if (reading !== null) combine(turnFor(turns, analyte.quantity), analyte.quantity, reading)
        }
      }
    }
    const cells = lines.map(({ record }) => record.cells[index] ?? '')
    if (rejected) return [{ kind: 'skipped', row, rule: 'rejected' }]
    if (isBesideSamples(name)) return [{ kind: 'skipped', row, rule: 'not_a_sample' }]
    if (problems.length > 0) return [{ kind: 'refused', row, problems, cells }]
    if (Object.keys(turns[0]?.readings ?? {}).length === 0)
      return [{ kind: 'skipped', row, rule: cells.every((cell) => cell.trim() === '') ? 'blank' : 'nothing_measured' }]
    return turns.map(({ readings }, turn) => {
      const sample: LabSample = { name, date, readings, notes: turn === 0 ? notes : {} }
      return { kind: 'sample', row, sample: turn === 0 ? sample : { ...sample, repeats: row } }
    })
  }

  /** Where repeated readings are kept side by side: the first sample of this column that has none of the quantity yet. */
  function turnFor(turns: Gathered[], quantity: string): Gathered {
    const free = keep ? turns.find(({ readings }) => readings[quantity] === undefined) : turns[0]
    if (free !== undefined) return free
    const next = { readings: {}, counts: {} }
    turns.push(next)
    return next
  }

  return {
    push(more) {
      for (const record of more) if (!isBlank(record.cells)) records.push(record)
      return []
    },
    end() {
      const lines = linesOf(records, understanding, labels, unitColumn)
      const width = records.reduce((most, { cells }) => Math.max(most, filledWidth(cells)), 0)
      const samples = Math.max(0, width - firstSample)
      const outcomes = Array.from({ length: samples }, (_, i) => read(firstSample + i, lines)).flat()
      met = outcomes.length
      return outcomes
    },
    met: () => met,
  }
}

type Line =
  | { readonly kind: 'status'; readonly record: CsvRecord; readonly heading: string }
  | { readonly kind: 'name'; readonly record: CsvRecord; readonly heading: string }
  | { readonly kind: 'date'; readonly record: CsvRecord; readonly heading: string }
  | {
      readonly kind: 'analyte'
      readonly record: CsvRecord
      readonly heading: string
      readonly analyte: ReturnType<ReturnType<typeof createAnalytes>>
    }

function linesOf(
  records: readonly CsvRecord[],
  understanding: Understanding,
  labels: number,
  unitColumn: number | null,
): readonly Line[] {
  const analyteOf = createAnalytes(understanding)
  let named = false
  return records.flatMap((record): Line[] => {
    const heading = (record.cells[labels] ?? '').trim()
    const role = ROLES.get(spelling(heading))
    if (role === 'date') return [{ kind: 'date', record, heading }]
    if (record.row < understanding.headerRow) return []
    if (record.row === understanding.headerRow && !named) {
      named = true
      return [{ kind: 'name', record, heading }]
    }
    if (!named && (role === 'sample' || role === 'place')) return [{ kind: 'name', record, heading }]
    if (role === 'status') return [{ kind: 'status', record, heading }]
    const unit = unitColumn === null ? '' : (record.cells[unitColumn] ?? '').trim()
    return [{ kind: 'analyte', record, heading, analyte: analyteOf(heading, unit, record.row) }]
  })
}

function filledWidth(cells: readonly string[]): number {
  let width = cells.length
  while (width > 0 && (cells[width - 1] ?? '').trim() === '') width--
  return width
}
