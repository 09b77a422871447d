import type { RowOutcome } from './outcome'
import type { LabReading } from './reading'
import { MEANINGS } from './synonyms'
import type { Understanding } from './understanding'

/** Writes samples as the CSV that `evaluate` takes: contract names, canonical units, comma, point, LF. */
export interface ContractCsv {
  readonly header: string
  line(outcome: Extract<RowOutcome, { kind: 'sample' }>): string
}

/**
 * `whole` says that the understanding has seen the entire file. Where it has not, a long file's further analytes have
 * columns too, so that none is without a place.
 */
export function contractCsv(understanding: Understanding, whole: boolean): ContractCsv {
  const { columns, analytes, known, shape } = understanding
  const found = new Set([...columns, ...analytes].map(({ quantity }) => quantity))
  const all = shape !== 'wide' && !whole
  const nameable = new Set([...MEANINGS.values()].flatMap(({ quantities }) => quantities))
  const names = known.map(({ name }) => name).filter((name) => found.has(name) || (all && nameable.has(name)))
  const dated = [...columns, ...analytes].some(({ role }) => role === 'date')
  return {
    header: `${['sample', ...(dated ? ['date'] : []), ...names].join(',')}\n`,
    line({ row, sample }) {
      let text = quoted(sample.name === '' ? String(row) : sample.name)
      if (dated) text += `,${sample.date}`
      for (const name of names) text += `,${written(sample.readings[name])}`
      return `${text}\n`
    },
  }
}

/** Shortest digits that read back as the same number; `ND` and `OR` (out of range) where a limit is not given. */
function written(reading: LabReading | undefined): string {
  if (reading === undefined) return ''
  if (reading.kind === 'choice') return reading.id
  if (reading.kind === 'value') return String(reading.canonical)
  if (reading.limit === null) return reading.sign === '<' ? 'ND' : 'OR'
  return `${reading.sign}${reading.limit}`
}

/** A text that a spreadsheet would run as a formula goes behind an apostrophe. */
export function quoted(text: string): string {
  const safe = /^[=+\-@\t\r]/.test(text) ? `'${text}` : text
  return /[",\n\r]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe
}
