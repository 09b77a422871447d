import fc from 'fast-check'
import { expect, test } from 'vitest'
import { contractCsv, quoted } from '../../src/intake/contractCsv'
import type { LabSample, RowOutcome } from '../../src/intake/outcome'
import { createSampleReader } from '../../src/intake/rows'
import { sniff } from '../../src/intake/sniff'
import { known } from './known'

const QUANTITIES = ['ph', 'temperature', 'total_alkalinity', 'calcium_hardness', 'free_chlorine', 'salt'] as const

const amount = fc.integer({ min: 1, max: 99_999 }).map((n) => n / 1_000)
const reading = fc.oneof(
  { weight: 6, arbitrary: amount.map((value) => ({ value, sign: '' })) },
  { weight: 1, arbitrary: amount.map((value) => ({ value, sign: '<' })) },
  { weight: 1, arbitrary: amount.map((value) => ({ value, sign: '>' })) },
  { weight: 2, arbitrary: fc.constant(null) },
)
type Row = { name: string; date: string; readings: ({ value: number; sign: string } | null)[] }

const row: fc.Arbitrary<Row> = fc.record({
  name: fc
    .string({ unit: fc.constantFrom(...'aZ9 ,;"\n=+-@äß|\t<>\''), minLength: 1, maxLength: 12 })
    .map((name) => name.trim())
    .filter((name) => name !== '' && !/^'[=+\-@]/.test(name)),
  date: fc.constantFrom('2026-07-14', '2026-12-31T23:59', '1999-01-01'),
  readings: fc.array(reading, { minLength: 6, maxLength: 6 }),
})
/** The first sample is always measured, and with decimals, so that the file shows its mark. */
const rows = fc.array(row, { minLength: 1, maxLength: 20 }).map((all) => [
  {
    name: 'first',
    date: '2026-01-01',
    readings: [7.25, 20.5, 30.5, 40.5, 0.5, 50.5].map((value) => ({ value, sign: '' })),
  },
  ...all,
])

function samplesIn(text: string | Uint8Array): readonly LabSample[] {
  const understanding = sniff(text, known)
  expect(understanding.problems).toEqual([])
  expect(understanding.questions).toEqual([])
  const reader = createSampleReader(understanding)
  const outcomes: RowOutcome[] = [...reader.push(text), ...reader.end()]
  expect(outcomes.filter(({ kind }) => kind === 'refused')).toEqual([])
  return outcomes.flatMap((outcome) => (outcome.kind === 'sample' ? [outcome.sample] : []))
}

/** pH beyond 14 is refused, rightly; here only what is written and read back is tried. */
function measured(all: readonly Row[]): readonly Row[] {
  return all
    .map((one) => ({ ...one, readings: one.readings.map((r, i) => (r && i < 2 ? { ...r, value: r.value % 14 } : r)) }))
    .filter(({ readings }) => readings.some((r) => r !== null))
}

function plain(samples: readonly LabSample[]) {
  return samples.map(({ name, date, readings }) => ({
    name,
    date,
    readings: Object.fromEntries(
      Object.entries(readings).map(([quantity, r]) => [
        quantity,
        r.kind === 'value' ? r.canonical : r.kind === 'censored' ? `${r.sign}${r.limit}` : r.id,
      ]),
    ),
  }))
}

function wanted(all: readonly Row[]) {
  return all.map(({ name, date, readings }) => ({
    name,
    date,
    readings: Object.fromEntries(
      readings.flatMap((r, i) =>
        r === null ? [] : [[QUANTITIES[i], r.sign === '' ? r.value : `${r.sign}${r.value}`]],
      ),
    ),
  }))
}

test('what is written under any delimiter, decimal mark, line end and encoding is read back the same', {
  timeout: 300_000,
}, () => {
  const dialect = fc.record({
    delimiter: fc.constantFrom(',', ';', '\t', '|'),
    decimal: fc.constantFrom('.', ','),
    end: fc.constantFrom('\n', '\r\n', '\r'),
    encoding: fc.constantFrom('utf-8', 'utf-8 bom', 'utf-16le', 'text'),
  })
  const property = fc.property(rows, dialect, (all, { delimiter, decimal, end, encoding }) => {
    const list = measured(all)
    const field = (text: string) => `"${text.replaceAll('"', '""')}"`
    const number = (r: Row['readings'][number] | undefined) =>
      r ? field(r.sign + String(r.value).replace('.', decimal)) : ''
    const lines = list.map(({ name, date, readings }) => [field(name), date, ...readings.map(number)].join(delimiter))
    const text = [['sample', 'date', ...QUANTITIES].join(delimiter), ...lines, ''].join(end)
    expect(plain(samplesIn(encoded(text, encoding)))).toEqual(wanted(list))
  })
  fc.assert(property, { seed: 3_200, numRuns: process.env.LONG ? 1_500 : 200 })
})

test('what the command writes is read back the same', { timeout: 300_000 }, () => {
  const property = fc.property(rows, (all) => {
    const list = measured(all)
    const head = ['sample', 'date', ...QUANTITIES].join(',')
    const body = list.map(({ name, date, readings }) =>
      [quoted(name), date, ...readings.map((r) => (r ? `${r.sign}${r.value}` : ''))].join(','),
    )
    const text = `${[head, ...body].join('\n')}\n`
    const understanding = sniff(text, known)
    const csv = contractCsv(understanding, true)
    const reader = createSampleReader(understanding)
    const outcomes = [...reader.push(text), ...reader.end()]
    const again = csv.header + outcomes.map((outcome) => (outcome.kind === 'sample' ? csv.line(outcome) : '')).join('')
    expect(plain(samplesIn(again))).toEqual(wanted(list))
  })
  fc.assert(property, { seed: 2_700, numRuns: process.env.LONG ? 1_500 : 200 })
})

function encoded(text: string, encoding: string): string | Uint8Array {
  if (encoding === 'text') return text
  if (encoding === 'utf-16le') return new Uint8Array(Buffer.from(`\ufeff${text}`, 'utf16le'))
  return new TextEncoder().encode(encoding === 'utf-8 bom' ? `\ufeff${text}` : text)
}
