import { isProblem } from '../words/problem'
import { createAnalytes } from './analyteReader'
import { cellProblem } from './cellProblem'
import { createNaming } from './fraction'
import { createGrouper } from './grouper'
import { readCell } from './numbers'
import type { RowOutcome } from './outcome'
import { detected, qualified, resultText } from './qualifier'
import type { CsvRecord } from './records'
import type { Role } from './roles'
import {
  asideBy,
  cellAt,
  columnOf,
  dateColumns,
  dateOf,
  isBlank,
  lastHeaderRow,
  malformed,
  type RowReader,
  refuse,
} from './rowReader'
import { spelling } from './spelling'
import type { Understanding } from './understanding'

/** One row a result. */
export function longReader(understanding: Understanding): RowReader {
  const column = (role: Role) => columnOf(understanding, role)
  const at = {
    sample: column('sample'),
    place: column('place'),
    analyte: column('analyte'),
    fraction: column('fraction'),
    result: column('result'),
    resultText: column('result_text'),
    qualifier: column('qualifier'),
    detection: column('detection'),
    unit: column('unit'),
    limit: column('limit'),
    limitUnit: column('limit_unit'),
  }
  const dates = dateColumns(understanding)
  const under = lastHeaderRow(understanding)
  const width = understanding.columns.length
  const portal = PORTALS.has(spelling(at.analyte?.heading ?? ''))
  const nameOf = createNaming(new Map(understanding.known.map((one) => [one.name, one])))
  const analyteOf = createAnalytes(understanding)
  const aside = asideBy(understanding)
  const grouper = createGrouper(understanding)
  let met = 0

  function read(record: CsvRecord): RowOutcome[] {
    const { row, cells } = record
    const skip = (rule: Extract<RowOutcome, { kind: 'skipped' }>['rule']): RowOutcome[] => [
      { kind: 'skipped', row, rule },
    ]
    if (isBlank(cells)) return skip('blank')
    const wrong = malformed(record, width)
    if (wrong !== null) return [refuse(record, wrong)]
    const name = cellAt(cells, at.analyte)
    if (name === at.analyte?.heading) return skip('header_again')
    const heading = nameOf(name, cellAt(cells, at.fraction))
    const set = aside(cells)
    if (set !== null) return skip(set)
    const result = resultOf(cells)
    if (result === null) return [refuse(record, cellProblem('lab_unknown_qualifier', row, heading, qualifiers(cells)))]
    if (heading === '') {
      return result === '' ? skip('nothing_measured') : [refuse(record, cellProblem('lab_no_analyte', row, '', result))]
    }
    const date = dateOf(record, understanding, dates)
    if (isProblem(date)) return [refuse(record, date)]
    const [id, place] = [cellAt(cells, at.sample), cellAt(cells, at.place)]
    const head = { name: id === '' ? place : id, date }
    const key = `${id}\n${place}\n${date}`
    const unit = cellAt(cells, at.unit)
    const analyte = analyteOf(heading, unit, row)
    if (analyte.kind === 'other') {
      if (result !== '') grouper.note(key, heading, unit === '' ? result : `${result} ${unit}`)
      return skip('other_analyte')
    }
    if (analyte.kind === 'unanswered') {
      return [refuse(record, cellProblem('lab_unanswered', row, heading, result, { choices: analyte.choices }))]
    }
    const reading = analyte.read(result, row, heading)
    if (reading === null) return skip('nothing_measured')
    if (isProblem(reading)) return [refuse(record, reading)]
    return grouper.part(record, key, head, analyte.quantity, reading)
  }

  /** The result with its qualifier and limit in one text; null where a qualifier is not understood. */
  function resultOf(cells: readonly string[]): string | null {
    const says = [
      qualified(cellAt(cells, at.qualifier), portal),
      detected(cellAt(cells, at.detection), at.detection?.heading ?? ''),
    ]
    if (says.includes('unknown')) return null
    if (says.includes('missing')) return ''
    const strongest =
      says.find((one) => one === 'under' || one === 'over') ?? says.find((one) => one === 'estimated') ?? 'plain'
    const words = cellAt(cells, at.resultText)
    const number = cellAt(cells, at.result)
    const limit = cellAt(cells, at.limit)
    const limitUnit = cellAt(cells, at.limitUnit)
    const bounded = limit === '' || limitUnit === '' ? limit : `${limit} ${limitUnit}`
    return resultText(words === '' ? number : besideNumber(words, number, understanding.decimal), strongest, bounded)
  }

  function qualifiers(cells: readonly string[]): string {
    return `${cellAt(cells, at.qualifier)} ${cellAt(cells, at.detection)}`.trim()
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

/**
 * A result given twice, as a number and as text: the text has the sign and often another decimal mark, the number is 0
 * where the text says "below the limit".
 */
function besideNumber(text: string, number: string, decimal: Understanding['decimal']): string {
  const read = readCell(text, null)
  if (read.kind === 'missing') return ''
  if (read.kind === 'censored') {
    if (read.limit === null) return read.sign === '<' ? 'ND' : 'OR'
    return `${read.sign}${String(read.limit).replace('.', decimal ?? '.')}${read.unit}`
  }
  return number === '' ? text : number
}

/** Analyte columns of public portals, in which remark codes have their published meaning. */
const PORTALS = new Set(['characteristicname', 'result characteristic'])
