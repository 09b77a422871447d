import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  afterDilution,
  continuousExchange,
  drainDepth,
  drainFraction,
  drainRounds,
  roundFraction,
} from '../../src/chemistry/dilution'
import { type DilutedQuantity, dilutionPlan } from '../../src/chemistry/dilutionPlan'

const seed = 20_260_714
const share = fc.double({ min: 0, max: 0.99, noNaN: true })

describe('dilution', () => {
  test('of nothing changes nothing, of everything leaves fill water', () => {
    expect(afterDilution('salt', 5_200, 80, 0)).toBe(5_200)
    expect(afterDilution('salt', 5_200, 80, 1)).toBe(80)
  })

  test('by the fraction for a limit meets the limit', () => {
    const reading = fc.double({ min: 1, max: 9_000, noNaN: true })
    fc.assert(
      fc.property(reading, fc.double({ min: 0.01, max: 0.99, noNaN: true }), share, (now, m, f) => {
        const most = now * m
        const fill = most * f * 0.9
        const x = Number(drainFraction('salt', now, most, fill))
        expect(x).toBeGreaterThanOrEqual(0)
        expect(Number(afterDilution('salt', now, fill, x))).toBeCloseTo(most, 6)
      }),
      { seed },
    )
  })

  // by hand: 5200 to 3400 and to 3200 with salt-free fill, stabilizer 180 to 50
  test.each([
    [5_200, 3_400, 0.346],
    [5_200, 3_200, 0.385],
    [180, 50, 0.722],
  ])('%d to %d takes a share of %d', (now, most, fraction) => {
    expect(Math.abs(Number(drainFraction('salt', now, most, 0)) - fraction)).toBeLessThanOrEqual(5.1e-4)
  })

  test('is none when within the limit, and cannot be when the fill water is at the limit', () => {
    expect(drainFraction('salt', 3_000, 3_200, 9_000)).toBe(0)
    expect(drainFraction('salt', 3_300, 3_200, 3_200)).toMatchObject({ failure: 'unreachable', quantity: 'salt' })
  })

  test('in equal rounds does as much as at once, in no more rounds than needed', () => {
    fc.assert(
      fc.property(share, fc.double({ min: 0.02, max: 0.9, noNaN: true }), (x, largest) => {
        const rounds = Number(drainRounds(x, largest))
        const each = roundFraction(x, rounds)
        expect(each).toBeLessThanOrEqual(largest * (1 + 1e-8))
        expect((1 - each) ** rounds).toBeCloseTo(1 - x, 9)
        if (rounds > 0) expect(1 - (1 - largest) ** (rounds - 1)).toBeLessThan(x)
      }),
      { seed, numRuns: 2_000 },
    )
  })

  // by hand: five times 10 % leave 59.05 %; three thirds take stabilizer from 180 to 53
  test('repeated', () => {
    expect(drainRounds(1 - 0.9 ** 5, 0.1)).toBe(5)
    expect(drainRounds(1 - (2 / 3) ** 3, 1 / 3)).toBe(3)
    expect(Number(afterDilution('cyanuric_acid', 180, 0, 1 - (2 / 3) ** 3))).toBeCloseTo(53.3, 1)
    expect(drainRounds(0, 1 / 3)).toBe(0)
    expect(drainRounds(1, 1 / 3)).toMatchObject({ failure: 'unreachable' })
  })

  // by hand: one volume run through leaves e^-1 = 36.79 %; halving takes ln 2 volumes
  test('by running through takes more water than by draining', () => {
    expect(Number(continuousExchange(1 - 0.3679, 1))).toBeCloseTo(1, 3)
    fc.assert(
      fc.property(share, (x) => {
        expect(Number(continuousExchange(x, 50))).toBeGreaterThanOrEqual(50 * x)
        expect(1 - Math.exp(-Number(continuousExchange(x, 50)) / 50)).toBeCloseTo(x, 9)
      }),
      { seed },
    )
  })

  test('lowers the level by its share of the mean depth, not below the shallow floor', () => {
    expect(drainDepth(1 / 3, 1.5, 1)).toBeCloseTo(0.5, 12)
    expect(drainDepth(0.8, 1.5, 1)).toMatchObject({ failure: 'out_of_range', quantity: 'drain_depth' })
  })
})

describe('dilution of several quantities', () => {
  const salt: DilutedQuantity = { quantity: 'salt', now: 5_200, fill: 0, most: 3_400 }
  const stabilizer: DilutedQuantity = { quantity: 'cyanuric_acid', now: 180, fill: 0, most: 50 }
  const calcium: DilutedQuantity = { quantity: 'calcium_hardness', now: 300, fill: undefined, most: 400 }

  test('takes the largest drain, and says for what', () => {
    const tapped = { ...calcium, fill: 100 }
    expect(dilutionPlan([salt, stabilizer, tapped])).toEqual({ fraction: 130 / 180, governs: 'cyanuric_acid' })
  })

  test('within every limit takes none, and needs no fill values', () => {
    expect(dilutionPlan([calcium])).toEqual({ fraction: 0, governs: 'none' })
  })

  test.each<[string, DilutedQuantity[], string, string]>([
    ['a fill value that is not taken', [{ ...salt, fill: undefined }], 'missing', 'fill_salt'],
    ['a reading that is not taken', [{ ...salt, now: undefined }], 'missing', 'salt'],
    [
      'no limit at all',
      [
        { ...salt, most: undefined },
        { ...stabilizer, most: undefined },
      ],
      'missing',
      'most_salt|most_cyanuric_acid',
    ],
    ['fill water over a limit', [stabilizer, { ...salt, fill: 3_500 }], 'unreachable', 'salt'],
    [
      'fill water that takes another over its limit',
      [stabilizer, { ...calcium, fill: 500 }],
      'unreachable',
      'calcium_hardness',
    ],
    [
      'a fill value of something within its limit, once water is drained',
      [stabilizer, calcium],
      'missing',
      'fill_calcium_hardness',
    ],
  ])('names %s', (_, quantities, failure, quantity) => {
    expect(dilutionPlan(quantities)).toMatchObject({ failure, quantity })
  })
})
