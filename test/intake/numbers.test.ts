import { describe, expect, test } from 'vitest'
import { decimalMark, numberIn, readCell } from '../../src/intake/numbers'

const value = (text: string, decimal: '.' | ',' | null) => {
  const read = readCell(text, decimal)
  return read.kind === 'value' ? read.value : read.kind === 'unreadable' ? read.why : read.kind
}

describe('readCell', () => {
  test.each<[string, '.' | ',' | null, number | string]>([
    ['7.24', '.', 7.24],
    ['7,24', ',', 7.24],
    ['7.24', null, 7.24],
    ['7,24', null, 7.24],
    ['6.120', ',', 6120],
    ['1,250', '.', 1250],
    ['1,250', ',', 1.25],
    ['1,250', null, 'ambiguous_number'],
    ['6.120', null, 'ambiguous_number'],
    ['0.125', null, 0.125],
    ['1,234,567', null, 1_234_567],
    ['1.234.567,8', null, 1_234_567.8],
    ["1'250.5", null, 1250.5],
    ['1 250', '.', 1250],
    ['1\u00a0250', ',', 1250],
    ['1\u2009250', '.', 1250],
    ['1\u202f250,5', ',', 1250.5],
    ['7,24', '.', 'not_a_number'],
    ['7.24', ',', 'not_a_number'],
    ['12,50', '.', 'not_a_number'],
    ['1,2,3', '.', 'not_a_number'],
    ['−0.3', '.', -0.3],
    ['1.2e3', '.', 1200],
    ['6,05E+03', ',', 6050],
    ['  7.6 ', '.', 7.6],
    ['~7.6', '.', 7.6],
    ['ca. 7,6', ',', 7.6],
    ['0', '.', 0],
    ['7.2-7.4', '.', 'not_a_number'],
    ['7.2/7.4', '.', 'not_a_number'],
    ['7.4?', '.', 'not_a_number'],
    ['7.4*', '.', 'not_a_number'],
    ['14.07.2026', '.', 'not_a_number'],
    ['09:30', '.', 'not_a_number'],
    ['#####', '.', 'not_a_number'],
    ['#DIV/0!', '.', 'not_a_number'],
    ['abc', '.', 'not_a_number'],
    ['1e999', '.', 'not_a_number'],
    ['(0.3)', '.', 'not_a_number'],
    ['', '.', 'missing'],
    ['-', '.', 'missing'],
    ['---', '.', 'missing'],
    ['–', '.', 'missing'],
    ['n/a', '.', 'missing'],
    ['n.b.', ',', 'missing'],
    ['NaN', '.', 'missing'],
  ])('%j with decimal mark %j is %j', (text, decimal, want) => expect(value(text, decimal)).toBe(want))

  test.each<[string, '.' | ',' | null, '<' | '>', number | null]>([
    ['<0.05', '.', '<', 0.05],
    ['< 0,05', ',', '<', 0.05],
    ['<0,05', null, '<', 0.05],
    ['≤ 0.05', '.', '<', 0.05],
    ['less than 5', '.', '<', 5],
    ['>200', '.', '>', 200],
    ['> 1.000', ',', '>', 1000],
    ['0.05 U', '.', '<', 0.05],
    ['U 0.05', '.', '<', 0.05],
    ['<0.05 J', '.', '<', 0.05],
    ['ND', '.', '<', null],
    ['n.d.', '.', '<', null],
    ['n.n.', ',', '<', null],
    ['BDL', '.', '<', null],
    ['<MDL', '.', '<', null],
    ['<LOQ', '.', '<', null],
    ['< LQ', '.', '<', null],
    ['<BG', '.', '<', null],
    ['Not Detected', '.', '<', null],
    ['*Non-detect', '.', '<', null],
    ['trace', '.', '<', null],
    ['TNTC', '.', '>', null],
    ['OR', '.', '>', null],
  ])('%j is kept as a limit', (text, decimal, sign, limit) => {
    expect(readCell(text, decimal)).toMatchObject({ kind: 'censored', sign, limit })
  })

  test.each([
    ['< abc', 'not_a_number'],
    ['<', 'not_a_number'],
    ['<1,250', 'ambiguous_number'],
  ])('%j is no limit', (text, why) => expect(readCell(text, null)).toEqual({ kind: 'unreadable', why }))

  test.each([
    ['84 °F', 84, '°F'],
    ['3.2ppm', 3.2, 'ppm'],
    ['14 °dH', 14, '°dH'],
    ['5 %', 5, '%'],
  ])('%j has its unit beside it', (text, number, unit) => {
    expect(readCell(text, '.')).toMatchObject({ kind: 'value', value: number, unit })
  })

  test('a laboratory’s J and E mark an estimate', () => {
    expect(readCell('1.2 J', '.')).toMatchObject({ value: 1.2, estimated: true })
    expect(readCell('E 1.2', '.')).toMatchObject({ value: 1.2, estimated: true })
    expect(readCell('1.2', '.')).toMatchObject({ value: 1.2, estimated: false })
  })

  test('long and hostile text is unreadable, quickly', () => {
    const start = performance.now()
    for (const text of [
      '9'.repeat(100_000),
      ' '.repeat(100_000),
      '1 '.repeat(50_000),
      `<${'<'.repeat(50_000)}`,
      'constructor',
      '__proto__',
    ]) {
      expect(['unreadable', 'missing']).toContain(readCell(text, '.').kind)
      numberIn(text)
    }
    expect(performance.now() - start).toBeLessThan(500)
  })
})

describe('decimalMark', () => {
  test.each([
    ['7', null],
    ['7.24', '.'],
    ['7,24', ','],
    ['0.250', '.'],
    ['1234,567', ','],
    ['1,250', 'ambiguous'],
    ['1,234,567', '.'],
    ['1.234,5', ','],
    ['-1.250', 'ambiguous'],
  ])('of %j is %j', (text, mark) => expect(decimalMark(text)).toBe(mark))
})
