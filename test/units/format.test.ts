import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { formatDifference, formatValue } from '../../src/units/format'
import { parseEntry } from '../../src/units/parseEntry'
import { displayUnit } from '../../src/units/profile'
import { readNumber } from '../../src/units/readNumber'
import { sameKind, UNITS, unitsOfKind } from '../../src/units/unit'
import { isProblem } from '../../src/words/problem'

const SEED = { seed: 20260714 }

describe('the profile', () => {
  test.each([
    ['mg/L as CaCO3', 'ppm as CaCO3'],
    ['mg/L', 'ppm'],
    ['°C', '°F'],
    ['m', 'ft'],
    ['m²', 'ft²'],
    ['m³', 'US gal'],
    ['kg', 'lb'],
    ['L', 'US fl oz'],
    ['m³/h', 'US gal/min'],
    ['L/day', 'US gal/day'],
    ['g/h', 'g/h'],
    ['µS/cm', 'µS/cm'],
    ['pH', 'pH'],
    ['choice', 'choice'],
    ['constructor', 'constructor'],
  ])('shows %s as %s to US readers, and as itself to others', (canonical, us) => {
    expect(displayUnit(canonical, 'us')).toBe(us)
    expect(displayUnit(canonical, 'metric')).toBe(canonical)
  })

  test('never shows a quantity in a unit of another kind', () => {
    expect(UNITS.filter((u) => !sameKind(u.code, displayUnit(u.code, 'us')))).toEqual([])
  })
})

describe('formatValue', () => {
  test.each<[number, string, string, number | undefined, string]>([
    [7.6, 'pH', 'pH', 2, '7.60'],
    [-0.107, '1', '1', 2, '−0.11'],
    [-0.001, '1', '1', 2, '0.00'],
    [-0, '1', '1', 0, '0'],
    [3200, 'mg/L as NaCl', 'ppm as NaCl', 0, '3200'],
    [56.78117676, 'm³', 'US gal', 1, '15,000'],
    [56.78117676, 'm³', 'US gal', 0, '15,000'],
    [56.78117676, 'm³', 'US gal', 2, '15,000'],
    [56.78117676, 'm³', 'US gal', 3, '15,000.0'],
    // 15 ft round, 4 ft of water: 5288 US gal
    [20.0168, 'm³', 'US gal', 2, '5288'],
    [20.0168, 'm³', 'US gal', 1, '5290'],
    [15, '°C', '°F', 1, '59.0'],
    [28, '°C', '°F', 0, '82'],
    [1.2192, 'm', 'ft', 2, '4.00'],
    [6050, 'µS/cm', 'mS/cm', 0, '6.050'],
    [0.33, '1', '%', 2, '33'],
    [264, 'mg/L as CaCO3', '°dH', 0, '14.79'],
    [1.234567, 'm', 'm', undefined, '1.235'],
    [12.3456, 'm', 'm', undefined, '12.35'],
    [0, 'm', 'm', undefined, '0'],
    [1e21, 'm', 'm', 0, '1,000,000,000,000,000,000,000'],
    [Number.NaN, 'm', 'm', 1, ''],
    [Number.NEGATIVE_INFINITY, 'm', 'ft', 1, ''],
  ])('%d %s in %s with %d decimals is %s', (value, canonical, unit, decimals, want) => {
    expect(formatValue(value, canonical, unit, decimals)).toBe(want)
  })

  test('with a decimal comma', () => {
    expect(formatValue(12_345.6, 'm³', 'm³', 1, ',')).toBe('12.345,6')
  })

  test('a unit that cannot hold the value is not used, and what is used is said', () => {
    expect(formatValue(20, 'm³', '°C', 1)).toBe('20.0 m³')
    expect(formatValue(90, 'mg/L as CaCO3', 'mg/L', 0)).toBe('90 mg/L CaCO₃')
    expect(formatDifference(2, 'm³', 'nonsense', 1)).toBe('+2.0 m³')
  })

  test('what is shown reads back within the resolution of the row', () => {
    const shown = fc
      .constantFrom(...UNITS.filter((u) => u.dimension !== 'choice'))
      .chain((u) => fc.tuple(fc.constant(u.code), fc.constantFrom(...unitsOfKind(u.code).map((other) => other.code))))
    fc.assert(
      fc.property(
        shown,
        fc.double({ min: -1e6, max: 1e6, noNaN: true }),
        fc.integer({ min: 0, max: 4 }),
        fc.constantFrom<'.' | ','>('.', ','),
        ([canonical, unit], value, decimals, decimal) => {
          const text = formatValue(value, canonical, unit, decimals, decimal)
          const entry = parseEntry(text, canonical, { profile: 'us', displayed: unit, decimal })
          if (entry === null || entry === 'not_taken' || isProblem(entry)) throw new Error(JSON.stringify(entry))
          expect(Math.abs(entry.canonical - value)).toBeLessThanOrEqual(
            0.5 * 10 ** -decimals + 1e-9 * (300 + Math.abs(value)),
          )
        },
      ),
      { ...SEED, numRuns: 2_000 },
    )
  })
})

describe('formatDifference', () => {
  test.each<[number, string, string, number, string]>([
    [0.3, '1', '1', 2, '+0.30'],
    [-0.34, '1', '1', 2, '−0.34'],
    [0, '1', '1', 2, '0.00'],
    [0.001, '1', '1', 2, '0.00'],
    [1, '°C', '°F', 1, '+1.8'],
    [-10, '°C', 'K', 0, '−10'],
  ])('%d %s in %s with %d decimals is %s', (value, canonical, unit, decimals, want) => {
    expect(formatDifference(value, canonical, unit, decimals)).toBe(want)
  })
})

describe('readNumber', () => {
  test.each<[string, '.' | ',', number | null]>([
    ['1,250', '.', 1250],
    ['1,250', ',', 1.25],
    ['6.120', ',', 6120],
    ['6.120', '.', 6.12],
    ['1 250 000', '.', 1_250_000],
    ['−3', '.', -3],
    ['1.2E-3', '.', 0.0012],
    ['5.', '.', 5],
    ['1e309', '.', null],
    ['7.6 mg/L', '.', null],
    ['--3', '.', null],
    ['0x10', '.', null],
    ['', '.', null],
    ['NaN', '.', null],
    ['Infinity', '.', null],
    ['٣', '.', null],
  ])('"%s" with "%s" for decimals is %d', (text, decimal, want) => {
    expect(readNumber(text, decimal)?.value ?? null).toBe(want)
  })
})
