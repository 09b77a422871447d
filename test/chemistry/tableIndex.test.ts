import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { isFailure } from '../../src/chemistry/failure'
import {
  ALKALINITY_FACTOR,
  BORATE_FACTOR,
  CALCIUM_FACTOR,
  CYANURATE_FACTOR,
  TEMPERATURE_FACTOR,
} from '../../src/chemistry/printedFactors'
import { type TableIndexReadings, tableIndex } from '../../src/chemistry/tableIndex'
import { readTable } from '../published/readTable'

const printed = readTable('saturation-table.csv')
const water: TableIndexReadings = {
  ph: 7.5,
  temperature: 25,
  calciumHardness: 250,
  totalAlkalinity: 100,
  cyanuricAcid: 0,
  borate: 0,
  tds: 900,
}

describe('the printed factors', () => {
  test('are those of the code, typed twice', () => {
    expect(TEMPERATURE_FACTOR).toEqual(printed.map((r) => [r.fahrenheit, r.temperature]))
    expect(CALCIUM_FACTOR).toEqual(printed.map((r) => [r.milligrams, r.calcium]))
    expect(ALKALINITY_FACTOR).toEqual(printed.map((r) => [r.milligrams, r.alkalinity]))
  })

  test.each(CALCIUM_FACTOR.map(([at, calcium], i) => ({ at, calcium, alkalinity: ALKALINITY_FACTOR[i]?.[1] ?? 0 })))(
    'at $at mg/L calcium is alkalinity less 0.4, and alkalinity is log10 to a tenth',
    ({ at, calcium, alkalinity }) => {
      expect(calcium).toBeCloseTo(alkalinity - 0.4, 10)
      expect(Math.abs(alkalinity - Math.log10(at))).toBeLessThanOrEqual(0.0501)
    },
  )

  test('follow the curve of cyanuric acid of pK 6.88 within 0.016', () => {
    for (const [ph, factor] of CYANURATE_FACTOR) {
      expect(Math.abs(factor - 0.38771 / (1 + 10 ** (6.88 - ph)))).toBeLessThanOrEqual(0.016)
    }
  })
})

describe('the table index', () => {
  // New York code's worked example: it interpolates on a straight line, CF 1.76 at 140, AF 1.22 at 20, TF 0.52 at 68 °F
  test('interpolates as the worked example of the code does', () => {
    const index = tableIndex({ ...water, ph: 7.8, temperature: 20, calciumHardness: 140, totalAlkalinity: 20 })
    expect(index).toBeCloseTo(7.8 + 0.52 + 1.76 + 1.225 - 12.1, 10)
  })

  test('is a tenth lower from 1000 mg/L of dissolved solids on', () => {
    const at = (tds: number) => Number(tableIndex({ ...water, tds }))
    expect(at(999)).toBe(at(0))
    expect(at(1_000)).toBeCloseTo(at(999) - 0.1, 12)
    expect(at(6_000)).toBe(at(1_000))
  })

  test('takes cyanurate and borate from the alkalinity', () => {
    const left = 100 - 0.33 * 90 - BORATE_FACTOR * 50
    expect(left).toBeCloseTo(61.8, 10)
    expect(tableIndex({ ...water, ph: 7.6, cyanuricAcid: 90, borate: 50 })).toBe(
      tableIndex({ ...water, ph: 7.6, totalAlkalinity: left }),
    )
  })

  test.each([
    [{ temperature: 53.4 }, 'out_of_range', 'temperature'],
    [{ temperature: -0.1 }, 'out_of_range', 'temperature'],
    [{ calciumHardness: 1_001 }, 'out_of_range', 'calcium_hardness'],
    [{ calciumHardness: 4 }, 'out_of_range', 'calcium_hardness'],
    [{ totalAlkalinity: 1_001 }, 'out_of_range', 'total_alkalinity'],
    [{ ph: 8.1, cyanuricAcid: 30 }, 'out_of_range', 'ph'],
    [{ totalAlkalinity: 30, cyanuricAcid: 100 }, 'no_such_water', 'total_alkalinity'],
    [{ totalAlkalinity: 32, cyanuricAcid: 90 }, 'out_of_range', 'total_alkalinity'],
  ])('answers nothing off the table: %o', (change, failure, quantity) => {
    expect(tableIndex({ ...water, ...change })).toMatchObject({ failure, quantity })
  })

  test('has no jump inside the table but the step of dissolved solids', () => {
    const spans: readonly [keyof TableIndexReadings, number, number][] = [
      ['temperature', 0, 53],
      ['calciumHardness', 5, 999],
      ['totalAlkalinity', 5, 999],
      ['ph', 5, 9.99],
    ]
    fc.assert(
      fc.property(fc.constantFrom(...spans), fc.double({ min: 0, max: 1, noNaN: true }), ([name, low, high], share) => {
        const at = low + share * (high - low)
        const here = tableIndex({ ...water, [name]: at })
        const there = tableIndex({ ...water, [name]: at + 1e-6 })
        if (isFailure(here) || isFailure(there)) throw new Error(`${name} ${at} is refused`)
        expect(Math.abs(there - here)).toBeLessThan(2e-6)
      }),
      { seed: 20_260_714 },
    )
  })
})
