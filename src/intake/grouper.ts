import { cellProblem } from './cellProblem'
import { createCombine, type Gathered } from './combine'
import { createMemory } from './memory'
import type { LabSample, RowOutcome } from './outcome'
import type { LabReading } from './reading'
import { createRecentSamples } from './recentSamples'
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

interface Open extends Gathered {
  readonly row: number
  readonly head: SampleHead
  readonly notes: Record<string, string>
  readonly repeats: number | null
}

/** Samples held open while their rows may still come: few where a file goes sample by sample, else as many as memory bears. */
const FEW = 2_000
const MANY = 100_000

export function createGrouper(understanding: Understanding): Grouper {
  const rule = understanding.answers.replicates ?? 'keep'
  const most = understanding.shape === 'long' && understanding.bySample ? FEW : MANY
  const combine = createCombine(understanding)
  const open = new Map<string, Open>()
  const closed = new Set<string>()
  const recent = createRecentSamples()
  const waitingNotes = createMemory<Record<string, string>>()

  /** Gives the oldest samples away once too many are open, a tenth at a time. */
  function close(): RowOutcome[] {
    if (open.size <= most) return []
    const out: RowOutcome[] = []
    for (const [key, one] of open) {
      if (out.length >= most / 10) break
      open.delete(key)
      closed.add(key)
      out.push(made(one))
    }
    return out
  }

  function opened(record: CsvRecord, key: string, head: SampleHead, repeats: number | null): Open {
    const notes = waitingNotes.get(key) ?? Object.create(null)
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
    first: Open,
  ): RowOutcome[] {
    const n = (first.counts[quantity] ?? 1) + 1
    first.counts[quantity] = n
    const nth = `${key}\n${n}`
    const one = open.get(nth)
    const target = one ?? opened(record, nth, head, first.row)
    target.readings[quantity] = reading
    return one === undefined ? close() : [{ kind: 'skipped', row: record.row, rule: 'joined' }]
  }

  return {
    whole(record, sample) {
      const { name, date } = sample
      if (rule === 'keep' || name === '') {
        const first = name === '' ? undefined : recent.get(name, date)
        if (name !== '' && first === undefined) recent.set(name, date, record.row)
        return [
          { kind: 'sample', row: record.row, sample: first === undefined ? sample : { ...sample, repeats: first } },
        ]
      }
      const key = `${name}\n${date}`
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
      if (rule === 'keep') return aside(record, key, head, quantity, reading, one)
      combine(one, quantity, reading)
      return [{ kind: 'skipped', row: record.row, rule: 'repeated' }]
    },
    note(key, heading, text) {
      const one = open.get(key)
      const notes = one?.notes ?? waitingNotes.get(key) ?? Object.create(null)
      notes[heading] = notes[heading] === undefined ? text : `${notes[heading]}; ${text}`
      if (one === undefined) waitingNotes.set(key, notes)
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
