import { describe, expect, test } from 'vitest'
import { staleDays } from '../../src/record/staleDays'

const at = new Date(2026, 4, 9, 0, 5)

describe('the age of a test', () => {
  test.each([
    ['2026-05-09', null],
    ['2026-05-07', null],
    ['2026-05-06', 3],
    ['2026-05-06T23:59', 3],
    ['2025-05-09', 365],
    // not yet, or not known
    ['2026-06-01', null],
    ['', null],
    ['some day', null],
  ] as const)('%s: %s', (tested, days) => {
    expect(staleDays(tested, at)).toBe(days)
  })
})
