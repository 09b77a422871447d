import fc from 'fast-check'
import Papa from 'papaparse'
import { describe, expect, test } from 'vitest'
import { createCsvReader } from '../../src/intake/records'

function cut(text: string, delimiter: string, piece: number) {
  const reader = createCsvReader(delimiter)
  const records = []
  for (let at = 0; at < text.length; at += piece) records.push(...reader.push(text.slice(at, at + piece)))
  records.push(...reader.end())
  return records
}

const soup = fc.string({
  unit: fc.constantFrom('a', '7', ',', ';', '"', '""', '\n', '\r\n', '\r', ' ', ', "', 'é'),
  maxLength: 60,
})

describe('createCsvReader', () => {
  test('cuts the same records however the text comes in', () => {
    const property = fc.property(
      soup,
      fc.integer({ min: 1, max: 9 }),
      fc.constantFrom(',', ';'),
      (text, piece, delimiter) => {
        expect(cut(text, delimiter, piece)).toEqual(cut(text, delimiter, 1_000))
      },
    )
    fc.assert(property, { seed: 4_180, numRuns: process.env.LONG ? 50_000 : 3_000 })
  })

  test('agrees with the parser on well-formed text (RFC 4180)', () => {
    const table = fc.array(
      fc.array(fc.string({ unit: fc.constantFrom('a', '7', ',', '"', '\n', ' x') }), { minLength: 2, maxLength: 4 }),
      { minLength: 1, maxLength: 6 },
    )
    const property = fc.property(table, fc.integer({ min: 1, max: 9 }), (rows, piece) => {
      const text = Papa.unparse(rows, { quotes: true, newline: '\n' })
      expect(cut(text, ',', piece).map(({ cells }) => cells)).toEqual(rows)
    })
    fc.assert(property, { seed: 111, numRuns: 500 })
  })

  test('rows are counted without a line that declares the delimiter, and with blank ones', () => {
    expect(cut('sep=;\r\na;b\r\n\r\n1;2\r\n', ';', 3)).toEqual([
      { row: 1, cells: ['a', 'b'] },
      { row: 2, cells: [''] },
      { row: 3, cells: ['1', '2'] },
    ])
  })

  test('a quote that is never closed costs one line, of a million too, and no time', () => {
    const text = `a,b\n"1,2\n${'3,4\n'.repeat(200_000)}`
    const start = performance.now()
    const records = cut(text, ',', 65_536)
    expect(records.length).toBe(200_002)
    expect(records.filter(({ broken }) => broken).map(({ row }) => row)).toEqual([2])
    expect(performance.now() - start).toBeLessThan(5_000)
  })

  test('quotes that open on every line are bounded', () => {
    const start = performance.now()
    expect(cut('"x,1\n'.repeat(50_000), ',', 65_536).length).toBeGreaterThan(0)
    expect(cut('"'.repeat(300_001), ',', 65_536).length).toBe(1)
    expect(cut('x'.repeat(9_000_000), ',', 65_536).length).toBeGreaterThan(0)
    expect(performance.now() - start).toBeLessThan(10_000)
  })
})
