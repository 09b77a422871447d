import { RESULT, type ResultColumn, type Results } from '../../engine/results'
import { formatValue } from '../../units/format'
import type { Problem } from '../../words/problem'
import { hasWords, say } from '../../words/say'
import { judge } from '../../worksheet/judge'
import { decimalsOf } from '../decimalsOf'
import { missingLabels } from '../grid/cellView'
import { labelOf } from '../labelOf'
import { noticeText } from '../noticeText'
import type { Reader } from './reader'
import type { Standing, TableColumn } from './tableColumn'

/** What was worked out, as columns of the table; the last one has what the engine remarked. */
export function resultColumns(results: Results, reader: Reader): readonly TableColumn[] {
  const columns = results.columns.flatMap((column) => resultColumn(results, column, reader) ?? [])
  return columns.length > 0 ? [...columns, remarks(results)] : []
}

function resultColumn(results: Results, column: ResultColumn, reader: Reader): TableColumn | null {
  const { quantity, values, states } = column
  const row = reader.row(quantity)
  if (!row) return null
  const unit = reader.unit(quantity)
  const band = reader.band(row)
  const decimals = decimalsOf(row)
  const figure = row.unit !== 'choice' && row.unit !== 'truth'
  const problem = (sample: number) => problemAt(results, column, sample)
  const number = (sample: number) => (states[sample] === RESULT.number ? (values[sample] ?? Number.NaN) : Number.NaN)
  const standing = (sample: number): Standing => {
    const why = problem(sample)
    if (why) return why.code === 'missing' ? 'missing' : 'refused'
    return states[sample] === RESULT.none ? 'missing' : 'value'
  }
  const word = (sample: number) => {
    const value = values[sample] ?? -1
    if (states[sample] === RESULT.truth) return say(value === 1 ? 'page.yes' : 'page.no')
    const id = results.texts[value] ?? ''
    const key = `choice.${quantity}.${id}`
    return hasWords(key) ? say(key) : id
  }
  const shown: TableColumn = {
    key: quantity,
    group: 'result',
    label: labelOf(quantity, row),
    kind: figure ? 'figure' : 'text',
    unit: figure ? unit : '',
    row,
    standing,
    number,
    text: (sample) => {
      if (states[sample] === RESULT.number) return formatValue(number(sample), row.unit, unit, decimals)
      const why = problem(sample)
      if (why) return shortly(why)
      return states[sample] === RESULT.none ? '' : word(sample)
    },
    written: (sample) => {
      if (states[sample] === RESULT.number) return number(sample)
      if (states[sample] === RESULT.truth) return String(values[sample] === 1)
      return states[sample] === RESULT.text ? (results.texts[values[sample] ?? -1] ?? '') : ''
    },
    side: (sample) => (band && states[sample] === RESULT.number ? judge(number(sample), band) : null),
  }
  return band ? { ...shown, band } : shown
}

/** Why a sample has no value in a result column; undefined where it has one. */
export function problemAt(results: Results, { states, values }: ResultColumn, sample: number): Problem | undefined {
  return states[sample] === RESULT.problem ? results.problems[values[sample] ?? -1] : undefined
}

/** In the cell, in a few words; the line under the table has the whole sentence. */
function shortly({ code, facts }: Problem): string {
  if (code === 'missing') {
    const names = Array.isArray(facts.names) ? facts.names.slice(0, 1) : []
    const more = Array.isArray(facts.names) ? facts.names.length - 1 : 0
    return more > 0
      ? say('page.needs_more', { names: missingLabels(names), count: more })
      : say('page.needs', { names: missingLabels(names) })
  }
  const short = `page.short.${code}`
  return hasWords(short) ? say(short) : say('page.no_answer')
}

function remarks({ notices, noticeSets }: Results): TableColumn {
  const texts = noticeSets.map((set) => set.map(noticeText).join(' '))
  const codes = noticeSets.map((set) => set.join(' '))
  const set = (sample: number) => notices[sample] ?? 0
  return {
    key: 'remarks',
    group: 'result',
    label: say('page.results.remarks'),
    kind: 'text',
    unit: '',
    standing: (sample) => (set(sample) === 0 ? 'missing' : 'value'),
    number: () => Number.NaN,
    text: (sample) => texts[set(sample)] ?? '',
    written: (sample) => codes[set(sample)] ?? '',
    side: () => null,
  }
}
