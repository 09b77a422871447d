import type { RowOutcome } from './outcome'
import type { LabReading } from './reading'
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
}

/** Samples as columns, one entry a sample: what is kept of an import. It crosses between threads without being copied. */
export interface ImportedColumns {
  readonly count: number
  /** rows of the file as a spreadsheet shows them */
  readonly rows: Int32Array
  readonly names: readonly string[]
  readonly dates: readonly string[]
  readonly quantities: readonly ImportedColumn[]
  /** columns that are no quantity, as text */
  readonly notes: readonly { readonly heading: string; readonly texts: readonly string[] }[]
}

export interface ColumnBuilder {
  add(outcome: Extract<RowOutcome, { kind: 'sample' }>): void
  finish(): ImportedColumns
}

interface Growing {
  values: Float64Array<ArrayBuffer>
  states: Uint8Array<ArrayBuffer>
}

export function createColumnBuilder({ known }: Pick<Understanding, 'known'>): ColumnBuilder {
  const choices = new Map(known.flatMap(({ name, choices: ids }) => (ids === undefined ? [] : [[name, ids] as const])))
  const columns = new Map<string, Growing>()
  const notes = new Map<string, string[]>()
  const names: string[] = []
  const dates: string[] = []
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
      Object.assign(column, { values, states })
    }
  }

  function columnFor(quantity: string): Growing {
    const there = columns.get(quantity)
    if (there !== undefined) return there
    const made = { values: new Float64Array(room).fill(Number.NaN), states: new Uint8Array(room) }
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
        const column = columnFor(quantity)
        column.states[count] = stateOf(reading)
        column.values[count] = numberOf(reading, choices.get(quantity))
      }
      for (const heading in sample.notes) {
        const texts = notes.get(heading) ?? []
        while (texts.length < count) texts.push('')
        texts.push(sample.notes[heading] ?? '')
        notes.set(heading, texts)
      }
      count++
    },
    finish() {
      const order = known.map(({ name }) => name).filter((name) => columns.has(name))
      return {
        count,
        rows: rows.slice(0, count),
        names,
        dates,
        quantities: order.map((quantity) => {
          const { values, states } = columnFor(quantity)
          return { quantity, values: values.slice(0, count), states: states.slice(0, count) }
        }),
        notes: [...notes].map(([heading, texts]) => ({
          heading,
          texts: texts.concat(Array<string>(count - texts.length).fill('')),
        })),
      }
    },
  }
}

/** The memory that can be handed to another thread. */
export function transferable({ rows, quantities }: ImportedColumns): ArrayBufferLike[] {
  return [rows.buffer, ...quantities.flatMap(({ values, states }) => [values.buffer, states.buffer])]
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
