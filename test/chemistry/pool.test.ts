import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { isFailure } from '../../src/chemistry/failure'
import { type PoolPlan, type PoolShape, poolArea } from '../../src/chemistry/poolArea'
import { type PoolDepths, poolMeanDepth } from '../../src/chemistry/poolMeanDepth'
import { poolVolume } from '../../src/chemistry/poolVolume'
import { shareFiltered, turnoversPerDay, turnoverTime } from '../../src/chemistry/turnover'
import { volumeFromSaltRise } from '../../src/chemistry/volumeFromSaltRise'
import { volumeInterval } from '../../src/chemistry/volumeInterval'

const FOOT = 0.3048
const GALLON = 0.003785411784

const plan = (given: Partial<PoolPlan>): PoolPlan => ({
  length: undefined,
  width: undefined,
  diameter: undefined,
  surfaceArea: undefined,
  ...given,
})
const depths = (given: Partial<PoolDepths> & { shallow: number }): PoolDepths => ({
  deep: undefined,
  area: undefined,
  hopperLength: undefined,
  hopperWidth: undefined,
  hopperDepth: undefined,
  ...given,
})

describe('volume by shape', () => {
  // US gal, from 7.48052 US gal a cubic foot (NIST SP 811) and the area by hand; trade tables print 13 536 and 10 575 to 10 620
  test.each<[PoolShape, Partial<PoolPlan>, number, number]>([
    ['rectangle', { length: 36 * FOOT, width: 18 * FOOT }, 5, 24_237],
    ['round', { diameter: 24 * FOOT }, 4, 13_536],
    ['round', { diameter: 15 * FOOT }, 4, 5_288],
    ['round', { diameter: 15 * FOOT }, 3.5, 4_627],
    ['oval', { length: 30 * FOOT, width: 15 * FOOT }, 4, 10_575],
    ['freeform', { surfaceArea: 0.45 * (14 + 18) * 30 * FOOT * FOOT }, 5, 16_158],
  ])('%s %o, %d ft of water: %d US gal', (shape, given, feet, gallons) => {
    expect(Math.abs(Number(poolVolume(shape, plan(given), feet * FOOT)) / GALLON - gallons)).toBeLessThan(0.6)
  })

  test('a stadium lies between its ellipse and its box, and is a circle when as wide as long', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 20, noNaN: true }),
        fc.double({ min: 0, max: 30, noNaN: true }),
        (width, more) => {
          const sides = plan({ length: width + more, width, diameter: width })
          const area = (shape: PoolShape) => Number(poolArea(shape, sides))
          expect(area('stadium')).toBeGreaterThanOrEqual(area('oval') * (1 - 1e-12))
          expect(area('stadium')).toBeLessThanOrEqual(area('rectangle') * (1 + 1e-12))
          expect(Number(poolArea('stadium', plan({ length: width, width })))).toBeCloseTo(area('round'), 9)
        },
      ),
      { seed: 20_260_714 },
    )
  })

  test.each<[PoolShape, Partial<PoolPlan>, string, string]>([
    ['rectangle', { length: 8 }, 'missing', 'width'],
    ['round', { length: 8, width: 4 }, 'missing', 'diameter'],
    ['freeform', { length: 8, width: 4 }, 'missing', 'surface_area'],
    ['stadium', { length: 4, width: 8 }, 'out_of_range', 'length'],
    ['oval', { length: 8, width: -4 }, 'out_of_range', 'width'],
    ['round', { diameter: Number.NaN }, 'not_a_number', 'diameter'],
  ])('%s with %o is refused: %s %s', (shape, given, failure, quantity) => {
    expect(poolVolume(shape, plan(given), 1.2)).toMatchObject({ failure, quantity })
  })
})

describe('mean depth', () => {
  test('of an even slope is the mean of its ends, of a flat floor its depth', () => {
    expect(poolMeanDepth(depths({ shallow: 0.9, deep: 2.4 }))).toBeCloseTo(1.65, 12)
    expect(poolMeanDepth(depths({ shallow: 1.2 }))).toBe(1.2)
  })

  // a slice a time: a floor at 1 m, and a pit 2 m deep whose sides slope from 5 × 4 m at the floor to 3 × 2 m at the bottom
  test('with a hopper is what summing thin slices gives, within its slope', () => {
    let pit = 0
    const slices = 100_000
    for (let i = 0; i < slices; i++) {
      const down = (i + 0.5) / slices
      pit += ((5 - 2 * down) * (4 - 2 * down) * 2) / slices
    }
    const given = depths({ shallow: 1, area: 60, hopperLength: 4, hopperWidth: 3, hopperDepth: 3 })
    // halfway up the sides the pit is 4 × 3 m; the prismoid's exact volume is larger by height × 2 × 2 / 12
    expect(Number(poolMeanDepth(given)) * 60).toBeCloseTo(60 + pit - (2 * 2 * 2) / 12, 6)
  })

  // by hand: (1 + 2) / 2 + 3 × 2 × (3 - 2) / 50
  test('with a hopper in a sloping floor counts it from the deep end of the floor down', () => {
    const given = depths({ shallow: 1, deep: 2, area: 50, hopperLength: 3, hopperWidth: 2, hopperDepth: 3 })
    expect(poolMeanDepth(given)).toBeCloseTo(1.62, 12)
  })

  test.each<[Partial<PoolDepths>, string, string]>([
    [{ deep: 0.8 }, 'out_of_range', 'depth_deep'],
    [{ hopperLength: 3, hopperWidth: 2, hopperDepth: 2.5 }, 'missing', 'surface_area'],
    [{ hopperLength: 3, hopperDepth: 2.5, area: 50 }, 'missing', 'hopper_width'],
    [{ hopperLength: 3, hopperWidth: 2, hopperDepth: 0.9, area: 50 }, 'out_of_range', 'hopper_depth'],
    [{ hopperLength: 10, hopperWidth: 8, hopperDepth: 2.5, area: 50 }, 'out_of_range', 'hopper_width'],
  ])('%o is refused: %s %s', (given, failure, quantity) => {
    expect(poolMeanDepth(depths({ shallow: 1, ...given }))).toMatchObject({ failure, quantity })
  })
})

describe('volume from a rise of salt', () => {
  test('undoes the rise that the mass makes', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 2_000, noNaN: true }),
        fc.double({ min: 20, max: 5_000, noNaN: true }),
        (v, rise) => {
          expect(Number(volumeFromSaltRise((v * rise) / 1_000, 600, 600 + rise)) / v).toBeCloseTo(1, 9)
        },
      ),
      { seed: 20_260_714 },
    )
  })

  test('says nothing where the reading did not rise', () => {
    expect(volumeFromSaltRise(50, 3_000, 3_000)).toMatchObject({ failure: 'out_of_range', quantity: 'salt' })
  })
})

describe('the interval of a volume', () => {
  const basis = {
    measured: undefined,
    byShape: undefined,
    saltAdded: undefined,
    saltBefore: undefined,
    saltAfter: undefined,
    riseError: 300,
  }

  test('goes by the meter before the shape, and by the shape before salt', () => {
    expect(volumeInterval({ ...basis, measured: 50, byShape: 60 })).toEqual([49, 51])
    expect(volumeInterval({ ...basis, byShape: 60, saltAdded: 40 })).toEqual([54, 66])
  })

  test('of a small rise has no upper end', () => {
    const both = volumeInterval({ ...basis, saltAdded: 10, saltBefore: 3_000, saltAfter: 3_200 })
    if (isFailure(both)) throw new Error('refused')
    expect(both[0]).toBeCloseTo(10_000 / 500, 9)
    expect(both[1]).toMatchObject({ failure: 'unreachable', quantity: 'salt' })
  })

  test('without any basis names what is missing', () => {
    expect(volumeInterval(basis)).toMatchObject({ failure: 'missing', quantity: 'measured_volume' })
    expect(volumeInterval({ ...basis, saltAdded: 10 })).toMatchObject({ failure: 'missing', quantity: 'salt_before' })
  })
})

describe('turnover', () => {
  test('hours a turnover and turnovers a day are one fact', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 5_000, noNaN: true }),
        fc.double({ min: 0.1, max: 500, noNaN: true }),
        (v, q) => {
          expect(Number(turnoverTime(v, q)) * Number(turnoversPerDay(v, q, 24))).toBeCloseTo(24, 9)
        },
      ),
      { seed: 20_260_714 },
    )
  })

  // Gage and Bidwell's law as handbooks tabulate it
  test.each([
    [1, 0.632],
    [2, 0.865],
    [3, 0.95],
    [4, 0.982],
  ])('after %d turnovers a share of %d is filtered', (n, share) => {
    expect(Math.abs(Number(shareFiltered(n)) - share)).toBeLessThanOrEqual(5.1e-4)
  })
})
