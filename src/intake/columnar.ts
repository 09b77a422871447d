import type { RowOutcome } from './outcome'
import type { LabReading } from './reading'
import { createTexts, type Texts, type TextsBuilder } from './texts'
import type { Understanding } from './understanding'

/** What a cell of an imported column holds; a value of 0 in `values` beside `notTaken` is no reading. */
export const STATE = {
  notTaken: 0,
  value: 1,
  estimated: 2,
  unlikely: 3,
  mean: 4,
  below: 5,
  above: 6,
  belowUnstated: 7,
  aboveUnstated: 8,
} as const

export interface ImportedColumn {
  readonly quantity: string
  /** readings, or limits where the state is `below` or `above`, in the canonical unit; NaN where there is none; of a choice, its place in the list */
  readonly values: Float64Array
  /** one of STATE for each sample */
  readonly states: Uint8Array
  /** the unit of the file, by its code; where several were used, that of the first reading */
  readonly unit: string
  /** places after the point as the file has them in `unit`; `UNSAID` for what is no plain figure in it */
  readonly decimals: Uint8Array
}

export const UNSAID = 255

/** Samples as columns, one entry a sample: what is kept of an import. It crosses between threads without being copied. */
export interface ImportedColumns {
  readonly count: number
  /** rows of the file as a spreadsheet shows them */
  readonly rows: Int32Array
  readonly names: Texts
  readonly dates: Texts
  readonly quantities: readonly ImportedColumn[]
  /** columns that are no quantity, as text */
  readonly notes: readonly { readonly heading: string; readonly texts: Texts }[]
}

export interface ColumnBuilder {
  add(outcome: Extract<RowOutcome, { kind: 'sample' }>): void
  finish(): ImportedColumns
}

interface Growing {
  readonly unit: string
  values: Float64Array<ArrayBuffer>
  states: Uint8Array<ArrayBuffer>
  decimals: Uint8Array<ArrayBuffer>
}

export function createColumnBuilder({ known }: Pick<Understanding, 'known'>): ColumnBuilder {
  const choices = new Map(known.flatMap(({ name, choices: ids }) => (ids === undefined ? [] : [[name, ids] as const])))
  const columns = new Map<string, Growing>()
  const notes = new Map<string, { readonly texts: TextsBuilder; filled: number }>()
  const names = createTexts()
  const dates = createTexts()
  let rows = new Int32Array(1_024)
  let room = 1_024
  let count = 0

  function grow(): void {
    room *= 2
    const more = new Int32Array(room)
    more.set(rows)
    rows = more
    for (const column of columns.values()) {
      const values = new Float64Array(room).fill(Number.NaN, column.values.length)
      values.set(column.values)
      const states = new Uint8Array(room)
      states.set(column.states)
      const decimals = new Uint8Array(room).fill(UNSAID, column.decimals.length)
      decimals.set(column.decimals)
      Object.assign(column, { values, states, decimals })
    }
  }

  function columnFor(quantity: string, unit: string): Growing {
    const there = columns.get(quantity)
    if (there !== undefined) return there
    const made = {
      unit,
      values: new Float64Array(room).fill(Number.NaN),
      states: new Uint8Array(room),
      decimals: new Uint8Array(room).fill(UNSAID),
    }
    columns.set(quantity, made)
    return made
  }

  return {
    add({ row, sample }) {
      if (count === room) grow()
      rows[count] = row
      names.push(sample.name)
      dates.push(sample.date)
      for (const quantity in sample.readings) {
        const reading = sample.readings[quantity]
        if (reading === undefined) continue
        const column = columnFor(quantity, reading.kind === 'choice' ? 'choice' : reading.unit)
        column.states[count] = stateOf(reading)
        column.values[count] = numberOf(reading, choices.get(quantity))
        column.decimals[count] = decimalsOf(reading, column.unit)
      }
      for (const heading in sample.notes) {
        const note = notes.get(heading) ?? { texts: createTexts(), filled: 0 }
        for (; note.filled < count; note.filled++) note.texts.push('')
        note.texts.push(sample.notes[heading] ?? '')
        note.filled++
        notes.set(heading, note)
      }
      count++
    },
    finish() {
      const quantities = known.flatMap(({ name: quantity }) => {
        const column = columns.get(quantity)
        if (column === undefined) return []
        const { unit, values, states, decimals } = column
        const part = { values: values.slice(0, count), states: states.slice(0, count) }
        return [{ quantity, unit, ...part, decimals: decimals.slice(0, count) }]
      })
      return {
        count,
        rows: rows.slice(0, count),
        names: names.finish(),
        dates: dates.finish(),
        quantities,
        notes: [...notes].map(([heading, { texts, filled }]) => {
          for (let at = filled; at < count; at++) texts.push('')
          return { heading, texts: texts.finish() }
        }),
      }
    },
  }
}

/** The memory that can be handed to another thread. */
export function transferable({ rows, names, dates, quantities, notes }: ImportedColumns): ArrayBufferLike[] {
  return [
    rows.buffer,
    ...[names, dates, ...notes.map(({ texts }) => texts)].flatMap(({ bytes, ends }) => [bytes.buffer, ends.buffer]),
    ...quantities.flatMap(({ values, states, decimals }) => [values.buffer, states.buffer, decimals.buffer]),
  ]
}

function stateOf(reading: LabReading): number {
  if (reading.kind === 'choice') return STATE.value
  if (reading.kind === 'value') return STATE[reading.mark ?? 'value']
  if (reading.limit === null) return reading.sign === '<' ? STATE.belowUnstated : STATE.aboveUnstated
  return reading.sign === '<' ? STATE.below : STATE.above
}

function numberOf(reading: LabReading, choices: readonly string[] | undefined): number {
  if (reading.kind === 'choice') return choices?.indexOf(reading.id) ?? Number.NaN
  return reading.kind === 'value' ? reading.canonical : (reading.limit ?? Number.NaN)
}

const PLAIN = /^-?\d+(?:\.(\d+))?$/

function decimalsOf(reading: LabReading, unit: string): number {
  if (reading.kind !== 'value' || reading.unit !== unit) return UNSAID
  const plain = PLAIN.exec(reading.entered)
  return plain ? (plain[1]?.length ?? 0) : UNSAID
}
