import { describe, expect, test } from 'vitest'
import { believe } from '../../src/notebook/believe'
import type { Reading } from '../../src/notebook/notebook'
import { methodsOf } from '../../src/study/methods'

const read = (canonical: number, method?: string): Reading => ({
  kind: 'value',
  entered: String(canonical),
  unit: 'mg/L',
  canonical,
  ...(method === undefined ? {} : { method }),
})
const over = (canonical: number, method: string): Reading =>
  ({ ...read(canonical, method), kind: 'limit', side: 'above' }) as Reading

/** As the table of tests has it: a strip tells 30, the turbidity tube 15 (from memory), a drop in 25 mL 0.2, a strip 1. */
const advice = (quantity: string, ...readings: Reading[]) =>
  believe(quantity, readings, (method) => methodsOf(quantity).find((test) => test.method === method)?.half)

describe('of several readings of one quantity', () => {
  test('one alone needs no advice', () => {
    expect(advice('ph', read(7.4, 'strip'))).toBeNull()
  })

  test('the test that tells finer is believed, and those that agree within both errors are said to', () => {
    expect(advice('cyanuric_acid', read(70, 'strip'), read(40, 'turbidity'))).toEqual({
      best: 1,
      why: 'finer',
      apart: false,
    })
    // 30 and 15: they may lie 45 apart
    expect(advice('cyanuric_acid', read(90, 'strip'), read(40, 'turbidity'))).toMatchObject({ best: 1, apart: true })
  })

  test('a number is believed before a limit, unless they contradict each other', () => {
    expect(advice('cyanuric_acid', over(100, 'turbidity'), read(130, 'strip'))).toEqual({
      best: 1,
      why: 'number',
      apart: false,
    })
    expect(advice('cyanuric_acid', over(100, 'turbidity'), read(60, 'strip'))).toMatchObject({
      why: 'number',
      apart: true,
    })
  })

  test('over 10 mg/L of chlorine a titration is believed, for the dyes of the others bleach (trade press)', () => {
    expect(advice('free_chlorine', read(2, 'kit'), read(14, 'drop_test_10'))).toMatchObject({
      best: 1,
      why: 'bleaches',
      apart: true,
    })
    expect(advice('ph', read(7.5, 'kit'), read(7.4, 'strip'))).toMatchObject({ best: 0, why: 'finer' })
  })

  test('two tests of one kind: the first, until the reader says otherwise', () => {
    expect(advice('salt', read(3000, 'strip'), read(3200, 'strip'))).toEqual({ best: 0, why: 'first', apart: false })
    expect(advice('salt', read(3000), read(3001))).toEqual({ best: 0, why: 'first', apart: true })
  })
})
