import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { createLedger } from '../../src/intake/account'
import type { LabSample, RowOutcome } from '../../src/intake/outcome'
import { createSampleReader } from '../../src/intake/rows'
import { sniff } from '../../src/intake/sniff'
import type { Answers, Understanding } from '../../src/intake/understanding'
import { known } from './known'

/**
 * Invented files, each with one kind of mess, and beside each what a person reads in it: written by hand, conversions by
 * the factors of the units' definitions to five digits (17.848 mg/L as CaCO3 in a German degree, 50.04 in a meq/L ...).
 */
interface Expected {
  readonly what: string
  readonly answers?: Answers
  readonly problems?: readonly string[]
  readonly questions?: readonly string[]
  readonly encoding?: string
  readonly decimal?: string
  readonly shape?: string
  readonly headerRow?: number
  readonly unitsRow?: number
  readonly samples?: readonly {
    readonly name: string
    readonly date?: string
    readonly readings: Readonly<Record<string, number | string>>
    readonly notes?: Readonly<Record<string, string>>
  }[]
  readonly refused?: readonly { readonly row: number; readonly column?: string; readonly code: string }[]
  readonly skipped?: Readonly<Record<string, number>>
  readonly doubts?: readonly Readonly<Record<string, string>>[]
  /** headings kept as notes */
  readonly notes?: readonly string[]
  readonly repeats?: number
  /** readings that are marked so */
  readonly unlikely?: number
  /** rows of the samples */
  readonly rows?: readonly number[]
}

const folder = join(import.meta.dirname, 'files')
const names = readdirSync(folder).filter((name) => name.endsWith('.csv'))

const cases = names.map((name) => {
  const expected: Expected = JSON.parse(readFileSync(join(folder, name.replace(/csv$/, 'json')), 'utf8'))
  return { name, expected, bytes: new Uint8Array(readFileSync(join(folder, name))) }
})

function read(
  bytes: Uint8Array,
  understanding: Understanding,
  piece: number,
): { outcomes: readonly RowOutcome[]; met: number } {
  const reader = createSampleReader(understanding)
  const outcomes: RowOutcome[] = []
  for (let at = 0; at < bytes.length; at += piece) outcomes.push(...reader.push(bytes.subarray(at, at + piece)))
  outcomes.push(...reader.end())
  return { outcomes: outcomes.sort((a, b) => a.row - b.row), met: reader.met() }
}

function written(sample: LabSample): Record<string, number | string> {
  return Object.fromEntries(
    Object.entries(sample.readings).map(([name, reading]) => {
      if (reading.kind === 'choice') return [name, reading.id]
      if (reading.kind === 'value') return [name, reading.canonical]
      if (reading.limit === null) return [name, reading.sign === '<' ? 'ND' : 'OR']
      return [name, `${reading.sign}${Number(reading.limit.toPrecision(6))}`]
    }),
  )
}

/** The same number to five digits, the same text. */
function close(got: Record<string, number | string>, want: Readonly<Record<string, number | string>>): void {
  expect(Object.keys(got).sort()).toEqual(Object.keys(want).sort())
  for (const [name, value] of Object.entries(want)) {
    const found = got[name]
    if (typeof value === 'string' || typeof found !== 'number') expect({ [name]: found }).toEqual({ [name]: value })
    else
      expect(Math.abs(found - value), `${name} is ${found}, not ${value}`).toBeLessThanOrEqual(Math.abs(value) * 5e-5)
  }
}

test('there are at least thirty kinds of mess', () => expect(names.length).toBeGreaterThanOrEqual(30))

describe.each(cases)('$name', ({ expected, bytes }) => {
  const understanding = sniff(bytes, known, expected.answers ?? {})

  test(`is understood: ${expected.what}`, () => {
    expect(understanding.problems.map(({ code }) => code)).toEqual(expected.problems ?? [])
    expect(understanding.questions.map(({ code }) => code)).toEqual(expected.questions ?? [])
    for (const fact of ['encoding', 'decimal', 'shape', 'headerRow', 'unitsRow'] as const) {
      if (expected[fact] !== undefined) expect({ [fact]: understanding[fact] }).toEqual({ [fact]: expected[fact] })
    }
    const notes = understanding.columns.filter(({ role }) => role === 'note').map(({ heading }) => heading)
    if (expected.notes !== undefined) expect(notes).toEqual(expected.notes)
    expect(understanding.doubts.map(({ facts }) => facts)).toMatchObject(expected.doubts ?? [])
    expect(understanding.doubts.length).toBe(expected.doubts?.length ?? 0)
  })

  if (expected.samples === undefined) return

  test.each([1, 7, 64, 1_000_000])('is read in pieces of %d bytes', (piece) => {
    const { outcomes, met } = read(bytes, understanding, piece)
    const samples = outcomes.flatMap((outcome) => (outcome.kind === 'sample' ? [outcome] : []))
    const refused = outcomes.flatMap((outcome) => (outcome.kind === 'refused' ? [outcome] : []))
    expect(samples.map(({ sample }) => sample.name)).toEqual(expected.samples?.map(({ name }) => name))
    samples.forEach(({ sample }, i) => {
      const want = expected.samples?.[i]
      expect(sample.date).toBe(want?.date ?? '')
      close(written(sample), want?.readings ?? {})
      if (want?.notes !== undefined) expect(sample.notes).toEqual(want.notes)
    })
    if (expected.rows !== undefined) expect(samples.map(({ row }) => row)).toEqual(expected.rows)
    expect(
      refused.map(({ row, problems }) => ({ row, code: problems[0]?.code, column: problems[0]?.facts.column })),
    ).toMatchObject(expected.refused ?? [])
    expect(refused.length).toBe(expected.refused?.length ?? 0)
    const ledger = createLedger()
    ledger.met(met)
    for (const outcome of outcomes) ledger.add(outcome)
    const account = ledger.account()
    expect(account.skippedBy).toEqual(expected.skipped ?? {})
    expect(account.repeats).toBeGreaterThanOrEqual(expected.repeats ?? 0)
    if (expected.unlikely !== undefined) expect(account.unlikely).toBe(expected.unlikely)
    expect(account.rows).toBe(account.samples + account.refused + account.skipped)
  })
})
