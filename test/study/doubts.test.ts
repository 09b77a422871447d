import { describe, expect, test } from 'vitest'
import { doubtsOf, exactnessOf } from '../../src/study/doubtsOf'
import { methodsOf, TESTED } from '../../src/study/methods'
import { restsOn } from '../../src/study/restsOn'
import { swings } from '../../src/study/swings'
import { convert } from '../../src/units/convert'
import { hasWords } from '../../src/words/say'
import { shippedCatalog } from '../../src/worksheet/shippedCatalog'
import { evaluateWith, WATER } from './evaluateWith'

const catalog = shippedCatalog()
const readings = { column: WATER, catalog, precisions: {}, methods: new Map<string, string>(), volume: null }

describe('the table of tests', () => {
  test('names number inputs of the worksheets, with words for each test', () => {
    for (const quantity of TESTED) {
      const row = catalog.quantities.get(quantity)?.row
      expect(row && 'input' in row && row.input, quantity).toBe('number')
      for (const { method, half, source } of methodsOf(quantity)) {
        expect(hasWords(`method.${method}`), method).toBe(true)
        expect(half, quantity).toBeGreaterThan(0)
        expect(source.length).toBeGreaterThan(10)
      }
      expect(new Set(methodsOf(quantity).map(({ method }) => method)).size).toBe(methodsOf(quantity).length)
    }
  })

  test('has what the published sources say', () => {
    const half = (quantity: string, method: string) => methodsOf(quantity).find((m) => m.method === method)?.half
    // Utah R392-302: kit accuracy 0.5 mg/L of chlorine, 10 mg/L of cyanuric acid
    expect(half('free_chlorine', 'kit')).toBe(0.5)
    expect(half('cyanuric_acid', 'kit')).toBe(10)
    // BCIT, 2015: pH within 0.13 of true
    expect(half('ph', 'kit')).toBe(0.13)
    // trade newspaper, 2024: comparators and strips 0.4 pH and 1 mg/L
    expect([half('ph', 'comparator'), half('ph', 'strip'), half('free_chlorine', 'strip')]).toEqual([0.4, 0.4, 1])
  })
})

describe('how exact a reading is', () => {
  test('the reader’s figure before the test of the reading before that of the notebook before the usual one', () => {
    const value = { kind: 'value', entered: '0.3', unit: 'pH', canonical: 0.3 } as const
    expect(exactnessOf('ph', 7.5, value, 'strip')?.half).toBe(0.3)
    expect(exactnessOf('ph', 7.5, { kind: 'method', method: 'meter' }, 'strip')?.half).toBe(0.4)
    expect(exactnessOf('ph', 7.5, { kind: 'method', method: 'meter' })?.half).toBe(0.05)
    expect(exactnessOf('ph', 7.5, undefined, 'nobody’s')?.half).toBe(0.13)
    expect(exactnessOf('target_ph', 7.5, undefined)).toBe(null)
  })

  test('a share of the reading where that is more', () => {
    expect(exactnessOf('conductivity', 100, undefined)?.half).toBe(10)
    expect(exactnessOf('conductivity', 6000, undefined)?.half).toBe(120)
  })

  test('what was not taken has no doubt, nor has a target', () => {
    const found = doubtsOf(readings, new Set(['ph', 'phosphate', 'target_salt', 'lsi']))
    expect(found.map(({ quantity }) => quantity)).toEqual(['ph'])
  })

  test('the volume’s half width is that of its interval', () => {
    const volume = { value: 60, low: 54, high: 66 }
    expect(doubtsOf({ ...readings, volume }, new Set(['volume']))).toMatchObject([{ quantity: 'volume', half: 6 }])
    expect(doubtsOf({ ...readings, volume: { value: 60, low: 60, high: 60 } }, new Set(['volume']))).toEqual([])
  })
})

describe('what matters most', () => {
  const names = restsOn(catalog, 'salt_mass')

  test('what a quantity rests on', () => {
    expect([...names]).toEqual(expect.arrayContaining(['salt_mass', 'volume', 'salt', 'target_salt', 'salt_purity']))
    expect(names.has('ph')).toBe(false)
  })

  test('salt mass: the salt reading by 200 mg/L x 60 m³ = 12 kg, the volume by a tenth of 36 kg', async () => {
    const volume = { value: 60, low: 54, high: 66 }
    const doubts = doubtsOf({ ...readings, volume }, names)
    const found = await swings(evaluateWith(), { column: WATER, doubts, output: 'salt_mass' })
    const [first, second, ...others] = found.swings
    expect([first?.doubt.quantity, second?.doubt.quantity]).toEqual(['salt', 'volume'])
    expect(first?.moves).toBeCloseTo(12, 6)
    expect(second?.moves).toBeCloseTo(3.6, 6)
    expect(others.every(({ moves }) => moves === 0)).toBe(true)
    expect(convert(first?.doubt.half ?? 0, 'mg/L as NaCl', 'g/L as NaCl')).toBe(0.2)
  })

  test('a reading without which there is no answer any more comes first', async () => {
    const doubts = [
      { quantity: 'salt', value: 2600, half: 1, distribution: 'rectangular', least: 0, most: 45_000 },
      { quantity: 'ph', value: 7.6, half: 7.6, distribution: 'rectangular', least: 0, most: 14 },
    ] as const
    const { swings: found } = await swings(evaluateWith(), { column: WATER, doubts, output: 'lsi' })
    expect(found[0]?.doubt.quantity).toBe('ph')
  })
})
