import { type ImportedColumn, STATE, UNSAID } from '../../intake/columnar'
import { convert } from '../../units/convert'
import { formatValue } from '../../units/format'
import { hasWords, say } from '../../words/say'
import { judge } from '../../worksheet/judge'
import { decimalsOf } from '../decimalsOf'
import type { LabImport } from '../lab/labImport'
import { labelOf } from '../labelOf'
import type { Reader } from './reader'
import type { Standing, TableColumn } from './tableColumn'

/** The readings of an import as columns of the table. */
export function readingColumns({ head, columns }: LabImport, reader: Reader): readonly TableColumn[] {
  return columns.quantities.flatMap((column) => {
    const row = reader.row(column.quantity)
    if (!row) return []
    const unit = reader.unit(column.quantity)
    const band = reader.band(row)
    const choices = head.choices[column.quantity] ?? null
    const text = choices ? choiceText(column, choices) : figureText(column, row.unit, unit, decimalsOf(row))
    const standing = (sample: number) => STANDINGS[column.states[sample] ?? STATE.notTaken] ?? 'missing'
    const number = (sample: number) =>
      !choices && standing(sample) === 'value' ? (column.values[sample] ?? Number.NaN) : Number.NaN
    const reading: TableColumn = {
      key: column.quantity,
      group: 'reading',
      label: labelOf(column.quantity, row),
      kind: choices ? 'text' : 'figure',
      unit: choices ? '' : unit,
      row,
      standing,
      number,
      text,
      written: (sample) => {
        const value = number(sample)
        if (!Number.isNaN(value)) return value
        const state = column.states[sample]
        if (state === STATE.belowUnstated) return 'ND'
        if (state === STATE.aboveUnstated) return 'OR'
        return choices ? (choices[column.values[sample] ?? -1] ?? '') : censoredText(column, sample, String)
      },
      side: (sample) => {
        const value = number(sample)
        return band && !Number.isNaN(value) ? judge(value, band) : null
      },
    }
    return [band ? { ...reading, band } : reading]
  })
}

const STANDINGS: Readonly<Record<number, Standing>> = {
  [STATE.notTaken]: 'missing',
  [STATE.value]: 'value',
  [STATE.estimated]: 'value',
  [STATE.unlikely]: 'value',
  [STATE.mean]: 'value',
  [STATE.below]: 'censored',
  [STATE.above]: 'censored',
  [STATE.belowUnstated]: 'censored',
  [STATE.aboveUnstated]: 'censored',
}

function choiceText({ quantity, values }: ImportedColumn, choices: readonly string[]) {
  return (sample: number): string => {
    const id = choices[values[sample] ?? -1]
    if (id === undefined) return ''
    const key = `choice.${quantity}.${id}`
    return hasWords(key) ? say(key) : id
  }
}

/** As the file has it where it is shown in the file's unit, or one that reads the same (ppm); else as the row shows its values. */
function figureText(column: ImportedColumn, canonical: string, unit: string, decimals: number) {
  const shown = (value: number) => formatValue(value, canonical, unit, decimals)
  const alike = convert(0, column.unit, unit) === 0 && convert(1, column.unit, unit) === 1
  return (sample: number): string => {
    const state = column.states[sample] ?? STATE.notTaken
    if (state === STATE.notTaken) return ''
    if (STANDINGS[state] === 'censored') return censoredText(column, sample, shown)
    const value = column.values[sample] ?? Number.NaN
    const places = column.decimals[sample] ?? UNSAID
    const inFile = alike && places !== UNSAID ? convert(value, canonical, unit) : null
    return typeof inFile === 'number' ? formatValue(inFile, unit, unit, places) : shown(value)
  }
}

/** `<0.2`; without a figure in words, as the file had only a word for it. */
function censoredText({ states, values }: ImportedColumn, sample: number, shown: (limit: number) => string): string {
  const limit = values[sample] ?? Number.NaN
  switch (states[sample]) {
    case STATE.below:
      return `<${shown(limit)}`
    case STATE.above:
      return `>${shown(limit)}`
    case STATE.belowUnstated:
      return say('page.results.not_detected')
    case STATE.aboveUnstated:
      return say('page.results.over_range')
    default:
      return ''
  }
}
