import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { createLedger } from '../../src/intake/account'
import { createSampleReader } from '../../src/intake/rows'
import { sniff } from '../../src/intake/sniff'
import type { Answers, Understanding } from '../../src/intake/understanding'
import { hasWords, sentence } from '../../src/words/say'
import { known } from './known'

const folder = join(import.meta.dirname, 'files')
const files = readdirSync(folder)
  .filter((name) => name.endsWith('.csv'))
  .map((name) => new Uint8Array(readFileSync(join(folder, name))))

/** What editors, mail programs and slips of the hand put into a file. */
const SCRAPS = [
  '"',
  '""',
  ';',
  ',',
  '\t',
  '|',
  '\r',
  '\n',
  '\r\n',
  '\0',
  '<',
  '>',
  ' ',
  '.',
  '-',
  '1e999',
  'NaN',
  "'",
  '=',
  '\u00a0',
  '\ufeff',
  '\ud83d\ude00',
  'sep=;\n',
  'pH',
  'mg/L',
  '°dH',
  '31/12/2026',
  '__proto__',
  'constructor',
  '9'.repeat(400),
].map((text) => new TextEncoder().encode(text))

type Mutation = readonly [kind: 'cut' | 'put' | 'flip' | 'double' | 'swap', at: number, much: number, scrap: number]

const mutation: fc.Arbitrary<Mutation> = fc.tuple(
  fc.constantFrom('cut' as const, 'put' as const, 'flip' as const, 'double' as const, 'swap' as const),
  fc.double({ min: 0, max: 1, noNaN: true }),
  fc.integer({ min: 1, max: 60 }),
  fc.integer({ min: 0, max: SCRAPS.length - 1 }),
)

function mutated(bytes: Uint8Array, [kind, place, much, scrap]: Mutation): Uint8Array {
  const at = Math.floor(place * bytes.length)
  const [before, after] = [bytes.subarray(0, at), bytes.subarray(at)]
  if (kind === 'cut') return joined(before, after.subarray(much))
  if (kind === 'put') return joined(before, SCRAPS[scrap] ?? new Uint8Array(0), after)
  if (kind === 'double') return joined(before, after.subarray(0, much), after)
  if (kind === 'swap') return joined(after, before)
  const flipped = bytes.slice()
  if (flipped.length > 0) flipped[at % flipped.length] = (flipped[at % flipped.length] ?? 0) ^ (1 << (much % 8))
  return flipped
}

function joined(...parts: readonly Uint8Array[]): Uint8Array {
  const all = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0))
  let at = 0
  for (const part of parts) {
    all.set(part, at)
    at += part.length
  }
  return all
}

/** The first choice for everything that is asked, as a reader in a hurry would answer. */
function answered(understanding: Understanding): Answers {
  const columns: Record<string, { quantity?: string; unit?: string }> = {}
  let answers: Answers = { ...understanding.answers }
  for (const { code, heading, choices } of understanding.questions) {
    const [choice = ''] = choices
    if (code === 'decimal_mark') answers = { ...answers, decimal: choice as ',' | '.' }
    else if (code === 'date_order') answers = { ...answers, dates: choice as 'dmy' | 'mdy' | 'ymd' }
    else if (heading !== null) columns[heading] = code === 'which_unit' ? { unit: choice } : { quantity: choice }
  }
  return { ...answers, columns: { ...answers.columns, ...columns } }
}

test('mutated files: nothing is thrown, every row has one outcome, every word is there', { timeout: 600_000 }, () => {
  const property = fc.property(
    fc.integer({ min: 0, max: files.length - 1 }),
    fc.array(mutation, { minLength: 1, maxLength: 12 }),
    fc.constantFrom('keep', 'first', 'last', 'mean'),
    fc.integer({ min: 1, max: 400 }),
    (file, mutations, replicates, piece) => {
      const bytes = mutations.reduce(mutated, files[file] ?? new Uint8Array(0))
      let understanding = sniff(bytes, known, { replicates: replicates as 'keep' })
      for (let round = 0; round < 3 && understanding.questions.length > 0; round++) {
        for (const { code, facts } of understanding.questions)
          expect(hasWords(`intake.question.${code}`), JSON.stringify(facts)).toBe(true)
        understanding = sniff(bytes, known, answered(understanding))
      }
      for (const wrong of [...understanding.problems, ...understanding.doubts]) expect(sentence(wrong)).not.toBe('')
      for (const { why } of [...understanding.columns, ...understanding.analytes]) {
        for (const { code } of why) expect(hasWords(`intake.why.${code}`), code).toBe(true)
      }
      if (understanding.problems.length > 0) return
      const reader = createSampleReader(understanding)
      const ledger = createLedger()
      const rows = new Map<number, number>()
      const outcomes = []
      for (let at = 0; at < bytes.length; at += piece) outcomes.push(...reader.push(bytes.subarray(at, at + piece)))
      outcomes.push(...reader.end())
      ledger.met(reader.met())
      for (const outcome of outcomes) {
        ledger.add(outcome)
        // samples across, measured again: a further sample out of the same column
        const further = outcome.kind === 'sample' && outcome.sample.repeats === outcome.row
        if (!further) rows.set(outcome.row, (rows.get(outcome.row) ?? 0) + 1)
        if (outcome.kind === 'refused') for (const wrong of outcome.problems) expect(sentence(wrong)).not.toBe('')
        if (outcome.kind === 'skipped') expect(hasWords(`intake.skipped.${outcome.rule}`)).toBe(true)
        if (outcome.kind !== 'sample') continue
        for (const reading of Object.values(outcome.sample.readings)) {
          if (reading.kind === 'value') expect(Number.isFinite(reading.canonical)).toBe(true)
          if (reading.kind === 'censored' && reading.limit !== null) expect(Number.isFinite(reading.limit)).toBe(true)
        }
      }
      const account = ledger.account()
      expect(account.rows).toBe(account.samples + account.refused + account.skipped)
      expect([...rows.values()].every((count) => count === 1)).toBe(true)
    },
  )
  fc.assert(property, { seed: 20_260_714, numRuns: process.env.LONG ? 20_000 : 800 })
})
