import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { POUND, sheet, US_GALLON } from './sheet'

const salt = sheet('salt')
const window = { cell_salt_low: 2700, cell_salt_high: 3400 }
const seed = 20_260_715

describe('salt to add', () => {
  test('125.18 lb raise 15 000 US gal by 1000 mg/L (definitions of lb and gal)', () => {
    const { number } = salt({ volume: 15_000 * US_GALLON, salt: 500, target_salt: 1500 })
    expect(number('salt_mass') / POUND).toBeCloseTo(125.18, 1)
  })

  test('one bag of 40 lb is 959 mg/L in 5000 US gal (by hand: 40 / 5 / 8.3454 × 1000)', () => {
    const { number } = salt({ volume: 5000 * US_GALLON, salt: 0, target_salt: 2000, bag_mass: 40 * POUND })
    expect(number('salt_rise_per_bag')).toBeCloseTo(958.6, 0)
  })

  test('the need is the full one: purity counts, the interval of the volume does not', () => {
    const given = { volume: 50, volume_low: 45, salt: 1000, target_salt: 3000 }
    expect(salt(given).number('salt_mass')).toBeCloseTo(100, 9)
    expect(salt({ ...given, salt_purity: 0.8 }).number('salt_mass')).toBeCloseTo(125, 9)
  })

  test('under-salted water goes to the middle of the window', () => {
    const { number } = salt({ volume: 56.8, salt: 600, ...window })
    expect(number('salt_shortfall')).toBe(2450)
    expect(number('salt_mass')).toBeCloseTo(2.45 * 56.8, 9)
  })

  test('over-salted water goes to the top less the test’s error, water in the window stays', () => {
    const over = salt({ volume: 56.8, salt: 5200, salt_test_error: 200, ...window })
    expect([over.number('salt_mass'), over.number('salt_at_most')]).toEqual([0, 3200])
    expect(over.notices('salt_excess')).toContain('above_target:salt')
    expect(salt({ volume: 56.8, salt: 3300, salt_test_error: 200, ...window }).number('salt_at_most')).toBe(3400)
  })

  test('no target and no window is no dose', () => {
    expect(salt({ volume: 56.8, salt: 600 }).missing('salt_mass')).toEqual(['target_salt|cell_salt_low'])
  })
})

describe('bags', () => {
  const bags = { volume: 56.8, salt: 600, bag_mass: 18.14 }

  test('are rounded down and the rest is weighed', () => {
    const { number } = salt({ ...bags, ...window })
    expect(number('salt_bags_whole')).toBe(7)
    expect(number('salt_part_bag')).toBeCloseTo(2.45 * 56.8 - 7 * 18.14, 9)
    expect(number('salt_after_bags')).toBeCloseTo(600 + (7 * 18.14) / 0.0568, 6)
  })

  test('are rounded up only under the middle of the window', () => {
    const up = salt({ ...bags, ...window, target_salt: 2701 })
    expect([up.number('salt_bags_whole'), up.number('salt_part_bag')]).toEqual([7, 0])
    expect(up.number('salt_after_bags')).toBeLessThan(3050)
    expect(salt({ ...bags, target_salt: 2701 }).number('salt_bags_whole')).toBe(6)
  })

  test('that come out even leave nothing to weigh', () => {
    // 0.3 / 0.1 is a hair under 3 in the machine's arithmetic
    const { number } = salt({ volume: 1, salt: 0, target_salt: 300, bag_mass: 0.1 })
    expect([number('salt_bags_whole'), number('salt_part_bag')]).toEqual([3, 0])
  })

  test('law: bags and rest are the whole mass, which brings the water to what is wanted', () => {
    const reading = fc.double({ min: 0, max: 6000, noNaN: true })
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 2000, noNaN: true }),
        reading,
        reading,
        fc.double({ min: 5, max: 50, noNaN: true }),
        fc.double({ min: 0.5, max: 1, noNaN: true }),
        (volume, now, target, bag, purity) => {
          const { number } = salt({ volume, salt: now, target_salt: target, bag_mass: bag, salt_purity: purity })
          const mass = number('salt_mass')
          const parts = number('salt_bags_whole') * bag + number('salt_part_bag')
          expect(Math.min(mass, number('salt_part_bag'), number('salt_excess'))).toBeGreaterThanOrEqual(0)
          expect(parts).toBeCloseTo(mass, 5)
          expect(now + (1000 * mass * purity) / volume).toBeCloseTo(Math.max(now, target), 6)
        },
      ),
      { seed, numRuns: 300 },
    )
  })
})

describe('no dose on bad input', () => {
  test('readings over 400 mg/L apart', () => {
    const given = { volume: 56.8, salt: 2900, target_salt: 3200 }
    const apart = salt({ ...given, cell_salt_reading: 2400, bag_mass: 20 })
    expect(apart.problem('salt_mass')).toMatchObject({ code: 'disagree', facts: { quantity: 'salt' } })
    expect(apart.problem('salt_bags_whole').code).toBe('disagree')
    expect(apart.said('salt_mass')).toBe(
      'The salt readings are over 400 mg/L apart. No salt on a doubtful reading: test once more, by another way.',
    )
    expect(salt({ ...given, cell_salt_reading: 2600 }).number('salt_mass')).toBeCloseTo(17.04, 9)
  })

  test('a window upside down', () => {
    const { problem, said } = salt({ volume: 50, salt: 0, cell_salt_low: 3400, cell_salt_high: 2700 })
    expect(problem('salt_mass')).toMatchObject({ code: 'upside_down', facts: { quantity: 'cell_salt' } })
    expect(said('target_salt_used')).toContain('Look at its window again')
  })

  test.each([2000, 5000])('a target of %d outside the window', (target) => {
    expect(salt({ volume: 50, salt: 0, target_salt: target, ...window }).problem('salt_mass').code).toBe(
      'outside_window',
    )
  })

  test('fresh plaster is told', () => {
    const given = { volume: 50, salt: 0, target_salt: 3000, shell: 'plaster' }
    expect(salt({ ...given, shell_age: 10 }).notices('salt_mass')).toEqual(['young:shell'])
    expect(salt({ ...given, shell_age: 28 }).notices('salt_mass')).toEqual([])
  })
})

test('lost salt tells lost water: 3200 to 2900 in 14 days at 56.8 m³ is 400 L a day (by hand: V ln(c0 / c) / t)', () => {
  const { number, notices } = salt({ volume: 56.8, salt_before: 3200, salt: 2900, days_between: 14 })
  expect(number('water_loss')).toBeCloseTo(399.4, 1)
  expect(notices('water_loss')).toEqual(['wide:water_loss'])
})
