import { cellProblem } from './cellProblem'
import type { LabSample, RowOutcome } from './outcome'
import type { LabReading } from './reading'
import type { CsvRecord } from './records'
import { refuse } from './rowReader'
import type { Understanding } from './understanding'

/** Brings the rows of one sample together, and applies the rule for repeated readings. */
export interface Grouper {
  /** a row that is a whole sample */
  whole(record: CsvRecord, sample: LabSample): RowOutcome[]
  /** a row that is one reading of the sample `key` */
  part(record: CsvRecord, key: string, head: SampleHead, quantity: string, reading: LabReading): RowOutcome[]
  /** a text to keep with the sample `key`, if it is made */
  note(key: string, heading: string, text: string): void
  end(): RowOutcome[]
}

export interface SampleHead {
  readonly name: string
  readonly date: string
}

interface Open {
  readonly row: number
  readonly head: SampleHead
  readonly readings: Record<string, LabReading>
  readonly notes: Record<string, string>
  /** how many values a mean is of, by quantity */
  readonly counts: Record<string, number>
  readonly repeats: number | null
}

/** Samples held open while their rows may still come: few where a file goes sample by sample, else as many as memory bears. */
const FEW = 2_000
const MANY = 100_000
/** Names and dates remembered to show that a sample comes twice. */
const REMEMBERED = 10_000

export function createGrouper(understanding: Understanding): Grouper {
  const rule = understanding.answers.replicates ?? 'keep'
  const most = understanding.shape === 'long' && understanding.bySample ? FEW : MANY
  const units = new Map(understanding.known.map(({ name, unit }) => [name, unit]))
  const open = new Map<string, Open>()
  const closed = new Set<string>()
  const recent = new Map<string, number>()
  const waitingNotes = new Map<string, Record<string, string>>()

  /** A reading limited by the method has no mean: the earlier reading stands. */
  function combine(one: Open, quantity: string, reading: LabReading): void {
    const before = one.readings[quantity]
    if (before === undefined || rule === 'last') {
      one.readings[quantity] = reading
      return
    }
    if (before.kind !== 'value' || reading.kind !== 'value') return
    const count = (one.counts[quantity] ?? 1) + 1
    one.counts[quantity] = count
    const mean = before.canonical + (reading.canonical - before.canonical) / count
    const unit = units.get(quantity) ?? ''
    one.readings[quantity] = { kind: 'value', entered: String(mean), unit, canonical: mean, mark: 'mean' }
  }

  function close(): RowOutcome[] {
    const out: RowOutcome[] = []
    for (const [key, one] of open) {
      if (open.size <= most) break
      open.delete(key)
      closed.add(key)
      waitingNotes.delete(key)
      out.push(made(one))
    }
    return out
  }

  function opened(record: CsvRecord, key: string, head: SampleHead, repeats: number | null): Open {
    const notes = waitingNotes.get(key) ?? {}
    const one: Open = { row: record.row, head, readings: {}, notes, counts: {}, repeats }
    open.set(key, one)
    return one
  }

  /** The second, third ... sample of the same name, where repeated readings are kept side by side. */
  function aside(
    record: CsvRecord,
    key: string,
    head: SampleHead,
    quantity: string,
    reading: LabReading,
    first: number,
  ): RowOutcome[] {
    for (let n = 2; ; n++) {
      const nth = `${key}\n${n}`
      const one = open.get(nth)
      if (one?.readings[quantity] !== undefined) continue
      const target = one ?? opened(record, nth, head, first)
      target.readings[quantity] = reading
      return one === undefined ? close() : [{ kind: 'skipped', row: record.row, rule: 'joined' }]
    }
  }

  return {
    whole(record, sample) {
      const key = `${sample.name}\n${sample.date}`
      const first = sample.name === '' ? undefined : recent.get(key)
      if (rule === 'keep' || sample.name === '') {
        if (sample.name !== '' && first === undefined) remember(recent, key, record.row)
        return [
          { kind: 'sample', row: record.row, sample: first === undefined ? sample : { ...sample, repeats: first } },
        ]
      }
      if (rule === 'first' && first === undefined) remember(recent, key, record.row)
      if (rule === 'first') {
        return [
          first === undefined
            ? { kind: 'sample', row: record.row, sample }
            : { kind: 'skipped', row: record.row, rule: 'repeated' },
        ]
      }
      const before = open.get(key)
      const one = before ?? opened(record, key, sample, null)
      for (const [quantity, reading] of Object.entries(sample.readings)) combine(one, quantity, reading)
      Object.assign(one.notes, sample.notes)
      return before === undefined ? close() : [{ kind: 'skipped', row: record.row, rule: 'repeated' }]
    },
    part(record, key, head, quantity, reading) {
      if (closed.has(key)) {
        return [refuse(record, cellProblem('lab_late_row', record.row, '', head.name, { most }))]
      }
      const before = open.get(key)
      const one = before ?? opened(record, key, head, null)
      if (one.readings[quantity] === undefined) {
        one.readings[quantity] = reading
        return before === undefined ? close() : [{ kind: 'skipped', row: record.row, rule: 'joined' }]
      }
      if (rule === 'keep') return aside(record, key, head, quantity, reading, one.row)
      if (rule !== 'first') combine(one, quantity, reading)
      return [{ kind: 'skipped', row: record.row, rule: 'repeated' }]
    },
    note(key, heading, text) {
      const one = open.get(key)
      const notes = one?.notes ?? waitingNotes.get(key) ?? {}
      notes[heading] = notes[heading] === undefined ? text : `${notes[heading]}; ${text}`
      if (one === undefined) remember(waitingNotes, key, notes)
    },
    end() {
      const out = [...open.values()].map(made)
      open.clear()
      return out
    },
  }
}

function made({ row, head, readings, notes, repeats }: Open): RowOutcome {
  const sample = { name: head.name, date: head.date, readings, notes }
  return { kind: 'sample', row, sample: repeats === null ? sample : { ...sample, repeats } }
}

function remember<T>(map: Map<string, T>, key: string, value: T): void {
  if (map.size >= REMEMBERED) {
    for (const oldest of map.keys()) {
      map.delete(oldest)
      break
    }
  }
  map.set(key, value)
}
