import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { cellMayRun, flowMargin } from '../../src/chemistry/cellConditions'
import {
  cellAlkalinity,
  cellHours,
  cellOutputFromCurrent,
  cellOutputMeasured,
  chlorineMade,
  GRAMS_PER_AMPERE_HOUR,
} from '../../src/chemistry/electrolysis'

const POUND = 453.59237
const TEN_THOUSAND_GALLONS = 37.85411784

describe('the cell', () => {
  // by hand: 70.906 / (2 × 26.8015 Ah/mol); handbooks print 1.323 g/Ah and 31.75 g a day and ampere
  test('makes 1.3228 g an ampere hour', () => expect(GRAMS_PER_AMPERE_HOUR).toBeCloseTo(70.906 / (2 * 26.8015), 5))

  test('makes a pound a day from 14.29 A, and as much from a third of it through three pairs', () => {
    expect(Number(cellOutputFromCurrent(14.29, 1, 1)) * 24).toBeCloseTo(POUND, 0)
    expect(cellOutputFromCurrent(14.29 / 3, 3, 1)).toBeCloseTo(Number(cellOutputFromCurrent(14.29, 1, 1)), 9)
  })

  // Utah Admin. Code R392-302: 4 lb outdoors and 2.5 lb indoors a day for 10 000 US gal; mg/L a day by hand
  test.each([
    [4, 47.93],
    [2.5, 29.96],
  ])('%d lb a day for 10 000 US gal is %d mg/L a day', (pounds, demand) => {
    const output = (pounds * POUND) / 24
    expect(Number(chlorineMade(output, 1, 24, TEN_THOUSAND_GALLONS))).toBeCloseTo(demand, 2)
    expect(Number(cellHours(demand, TEN_THOUSAND_GALLONS, output, 1))).toBeCloseTo(24, 2)
  })

  test('run for the hours of a demand makes that demand', () => {
    const demand = fc.double({ min: 0.1, max: 5, noNaN: true })
    fc.assert(
      fc.property(demand, fc.double({ min: 0.2, max: 1, noNaN: true }), (wanted, setting) => {
        const hours = Number(cellHours(wanted, 50, 20, setting))
        fc.pre(hours <= 24)
        expect(Number(chlorineMade(20, setting, hours, 50))).toBeCloseTo(wanted, 9)
      }),
      { seed: 20_260_714 },
    )
  })

  test('may need more hours than a day has', () => expect(Number(cellHours(4, 100, 10, 0.5))).toBe(80))

  // by hand: a 12 g/h cell makes 0.21 mg/L an hour in 56.8 m³
  test('is measured by a night', () => {
    expect(Number(chlorineMade(12, 1, 1, 56.8))).toBeCloseTo(0.21, 2)
    expect(Number(cellOutputMeasured(56.8, 2, 2 + 10 * 0.2113, 10, 1))).toBeCloseTo(12, 1)
    expect(Number(cellOutputMeasured(56.8, 2, 3, 10, 0.5))).toBe(2 * Number(cellOutputMeasured(56.8, 2, 3, 10, 1)))
    expect(cellOutputMeasured(56.8, 3, 2.8, 10, 1)).toMatchObject({
      failure: 'out_of_range',
      quantity: 'free_chlorine_dawn',
    })
  })

  test('leaves alkalinity as it was when its chlorine is used up', () => {
    expect(Number(cellAlkalinity(1, 0))).toBeCloseTo(50.04 / 70.906, 4)
    expect(Number(cellAlkalinity(2.5, 2.5))).toBe(0)
    expect(Number(cellAlkalinity(0, 1))).toBeCloseTo(-0.706, 3)
  })
})

describe('whether the cell may run', () => {
  test.each<[flow: number, least: number, most: number | undefined, celsius: number, cold: number, may: boolean]>([
    [8, 4, 12, 26, 15, true],
    [4, 4, 12, 15, 15, true],
    [3.9, 4, 12, 26, 15, false],
    [12.1, 4, 12, 26, 15, false],
    [40, 4, undefined, 26, 15, true],
    [8, 4, 12, 14.9, 15, false],
    [0, 0, undefined, 26, 15, false],
  ])('%d m³/h within %d and %s, %d °C over %d: %s', (flow, least, most, celsius, cold, may) => {
    expect(cellMayRun(flow, least, most, celsius, cold)).toBe(may)
  })

  test('the margin is to the nearer end', () => {
    expect(flowMargin(9, 4, 10)).toBe(1)
    expect(flowMargin(5, 4, 10)).toBe(1)
    expect(flowMargin(3, 4, 10)).toBe(-1)
    expect(flowMargin(8, 9, 7)).toMatchObject({ failure: 'out_of_range', quantity: 'maximum_cell_flow' })
  })
})
