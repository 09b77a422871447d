import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { darkLoss, isRefused, nightSays } from '../../src/record/night'

describe('a night with the cell on', () => {
  test('2.1 mg/L in 10 h in 56.8 m³ is 11.93 g/h (by hand: 2.1 × 56.8 / 10), the tests’ error either way', () => {
    const { output, demand } = nightSays({ dusk: 2, dawn: 4.1, hours: 10, setting: 1 }, 56.8, 0.2)
    if (isRefused(output)) throw new Error(output.refused)
    expect(output.value).toBeCloseTo(11.93, 2)
    expect(output.low).toBeCloseTo(11.93 - 2.272, 2)
    expect(output.high).toBeCloseTo(11.93 + 2.272, 2)
    expect(demand).toBeNull()
  })

  test('with the next dusk as the first, the pool used what the cell made (by hand: 11.93 g/h × 8 h / 56.8 m³)', () => {
    const night = { dusk: 2, dawn: 4.1, hours: 10, setting: 1, nextDusk: 2, cellHours: 8 }
    const { demand } = nightSays(night, 56.8, 0.2)
    if (demand === null || isRefused(demand)) throw new Error('no demand')
    expect(demand.value).toBeCloseTo(1.68, 2)
    expect(demand.low).toBeLessThan(demand.value)
    expect(demand.high).toBeGreaterThan(demand.value)
  })

  test('a rise within the tests’ error says nothing of the cell', () => {
    expect(nightSays({ dusk: 2, dawn: 2.3, hours: 10, setting: 1 }, 56.8, 0.2)).toMatchObject({
      output: { refused: 'within_error' },
      demand: null,
    })
    expect(nightSays({ dusk: 3, dawn: 2, hours: 10, setting: 1 }, 56.8, 0.2).output).toMatchObject({
      refused: 'impossible',
    })
    expect(nightSays({ dusk: 2, dawn: 4, hours: 0, setting: 1 }, 56.8, 0.2).output).toMatchObject({
      refused: 'impossible',
    })
  })

  test('of simulated cells and pools the truth is inside, a known loss counted', () => {
    const share = fc.double({ min: -1, max: 1, noNaN: true })
    fc.assert(
      fc.property(
        fc.record({
          output: fc.double({ min: 3, max: 60, noNaN: true }),
          volume: fc.double({ min: 5, max: 100, noNaN: true }),
          loss: fc.double({ min: 0, max: 0.05, noNaN: true }),
          sun: fc.double({ min: 0, max: 4, noNaN: true }),
          dusk: fc.double({ min: 4, max: 6, noNaN: true }),
          errors: fc.tuple(share, share, share),
        }),
        ({ output, volume, loss, sun, dusk, errors: [a, b, c] }) => {
          const [hours, cellHours, error] = [10, 9, 0.3]
          const dawn = dusk + (output * hours) / volume - loss * hours
          const nextDusk = dusk + (output * cellHours) / volume - loss * 24 - sun
          if (dawn > 45 || nextDusk < 1) return
          const night = {
            dusk: dusk + a * error,
            dawn: dawn + b * error,
            nextDusk: nextDusk + c * error,
            hours,
            cellHours,
            setting: 1,
          }
          const says = nightSays(night, volume, error, loss)
          if (isRefused(says.output)) return
          expect(says.output.low).toBeLessThanOrEqual(output + 1e-9)
          expect(says.output.high).toBeGreaterThanOrEqual(output - 1e-9)
          if (says.demand === null || isRefused(says.demand)) return
          expect(says.demand.low).toBeLessThanOrEqual(sun + loss * 24 + 1e-9)
          expect(says.demand.high).toBeGreaterThanOrEqual(sun + loss * 24 - 1e-9)
        },
      ),
      { seed: 20260516, numRuns: 500 },
    )
  })
})

describe('a night with the cell off', () => {
  test('1 mg/L in 10 h is 0.1 an hour (by hand)', () => {
    expect(darkLoss({ dusk: 4, dawn: 3, hours: 10, setting: 0 }, 0.2)).toEqual({
      value: expect.closeTo(0.1, 12),
      low: expect.closeTo(0.06, 12),
      high: expect.closeTo(0.14, 12),
    })
  })
  test('chlorine that rose is refused, unless the tests’ error explains it', () => {
    expect(darkLoss({ dusk: 3, dawn: 4, hours: 10, setting: 0 }, 0.2)).toMatchObject({ refused: 'impossible' })
    expect(darkLoss({ dusk: 3, dawn: 3.2, hours: 10, setting: 0 }, 0.2)).toMatchObject({ value: 0, low: 0 })
  })
})
