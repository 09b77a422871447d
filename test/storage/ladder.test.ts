import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { ladder } from '../../src/storage/ladder'

const HOUR = 3_600_000
const NOW = 1_780_000_000_000

/** States one span apart, the latest now. */
const every = (span: number, count: number, size = 1_000) =>
  Array.from({ length: count }, (_, at) => ({ seq: at + 1, at: NOW - (count - 1 - at) * span, size }))

const state = fc.record({
  at: fc.integer({ min: NOW - 900 * 24 * HOUR, max: NOW }),
  size: fc.integer({ min: 1, max: 1_500_000 }),
})
const states = fc
  .array(state, { maxLength: 150 })
  .map((all) => all.sort((a, b) => a.at - b.at).map((one, at) => ({ ...one, seq: at + 1 })))

describe('the ladder of earlier states', () => {
  test('has all of a short day, the last of each hour of a long one, and of each day and week before', () => {
    expect(ladder(every(60_000, 9), NOW)).toEqual([9, 8, 7, 6, 5, 4, 3, 2, 1])
    expect(ladder(every(60_000, 300), NOW).length).toBeGreaterThanOrEqual(10 + 4)
    expect(ladder(every(60_000, 300), NOW).length).toBeLessThanOrEqual(10 + 6)
    const years = ladder(every(24 * HOUR, 1_000), NOW)
    expect(years.length).toBeGreaterThan(14 + 20 + 18)
    expect(years.length).toBeLessThan(14 + 26 + 24)
  })

  test('never grows beyond its room, keeps the last three, and the last ten where they fit', () => {
    fc.assert(
      fc.property(states, (all) => {
        const stay = ladder(all, NOW)
        const sizeOf = new Map(all.map(({ seq, size }) => [seq, size]))
        const latest = all.map(({ seq }) => seq).reverse()
        expect(stay.slice(0, 3)).toEqual(latest.slice(0, 3))
        expect(stay.length).toBeLessThanOrEqual(10 + 24 + 14 + 26 + 24)
        const beyond = stay.slice(3).reduce((sum, seq) => sum + (sizeOf.get(seq) ?? 0), 0)
        const first = stay.slice(0, 3).reduce((sum, seq) => sum + (sizeOf.get(seq) ?? 0), 0)
        expect(beyond === 0 || first + beyond <= 4_000_000).toBe(true)
        const small = ladder(
          all.map((one) => ({ ...one, size: 1 })),
          NOW,
        )
        expect(small.slice(0, 10)).toEqual(latest.slice(0, 10))
      }),
      { seed: 20260501, numRuns: 300 },
    )
  })

  test('thinned twice is as thinned once', () => {
    fc.assert(
      fc.property(states, (all) => {
        const once = ladder(all, NOW)
        const standing = all.filter(({ seq }) => once.includes(seq))
        expect(ladder(standing, NOW)).toEqual(once)
      }),
      { seed: 20260501, numRuns: 300 },
    )
  })
})
