import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { sheet } from './sheet'

const dilution = sheet('dilution')
const seed = 20_260_715
const NONE = {
  fill_salt: 0,
  fill_cyanuric_acid: 0,
  fill_calcium_hardness: 0,
  fill_total_alkalinity: 0,
  fill_tds: 0,
}
const stabilizer = { volume: 50, cyanuric_acid: 180, most_cyanuric_acid: 50, fill_cyanuric_acid: 0 }

describe('the share to replace', () => {
  // by hand: 1800 / 5200 and 2000 / 5200
  test.each([
    [3400, 0.346],
    [3200, 0.385],
  ])('salt 5200 to %d', (most, share) => {
    expect(dilution({ salt: 5200, most_salt: most, fill_salt: 0 }).number('drain_fraction')).toBeCloseTo(share, 3)
  })

  test('30 % takes 100 to 70, five times 10 % leave 59.05 % (washout of a mixed tank, by hand)', () => {
    const one = dilution({ volume: 1, cyanuric_acid: 100, most_cyanuric_acid: 70, fill_cyanuric_acid: 0 })
    expect(one.number('drain_fraction')).toBeCloseTo(0.3, 12)
    const five = dilution({
      volume: 1,
      cyanuric_acid: 100,
      most_cyanuric_acid: 59.05,
      fill_cyanuric_acid: 0,
      largest_single_drain: 0.1,
    })
    expect(five.number('drain_rounds')).toBe(5)
    expect(five.number('drain_volume')).toBeCloseTo(0.5, 4)
  })

  test('the largest governs, by name', () => {
    const both = dilution({ ...stabilizer, salt: 5200, most_salt: 3400, fill_salt: 0 })
    expect(both.number('drain_fraction')).toBeCloseTo(130 / 180, 12)
    expect(both.value('dilution_governs')).toBe('cyanuric_acid')
    expect(both.number('salt_after_dilution')).toBeCloseTo(5200 * (50 / 180), 9)
  })

  test('72 % goes in four rounds of 27 %, or 64 m³ run through 50 (by hand: ln)', () => {
    const { number } = dilution(stabilizer)
    expect(number('drain_rounds')).toBe(4)
    expect(number('drain_round_share')).toBeCloseTo(1 - (50 / 180) ** 0.25, 12)
    expect(number('continuous_exchange_volume')).toBeCloseTo(50 * Math.log(180 / 50), 9)
  })

  test('nothing over its limit drains nothing and needs no fill value', () => {
    const within = dilution({
      volume: 50,
      salt: 3000,
      most_salt: 3400,
      cyanuric_acid: 40,
      calcium_hardness: 250,
      total_alkalinity: 80,
      ph: 7.5,
      tds: 3600,
    })
    for (const name of ['drain_fraction', 'drain_volume', 'drain_depth', 'drain_time', 'fill_time', 'drain_rounds'])
      expect([name, within.number(name)]).toEqual([name, 0])
    expect(within.value('dilution_governs')).toBe('none')
    expect(within.number('salt_after_dilution')).toBe(3000)
    expect(within.number('ph_after_dilution')).toBe(7.5)
  })

  test('the cell’s window sets the limit where none is entered', () => {
    const cell = { volume: 56.8, salt: 5200, fill_salt: 0, cell_salt_low: 2700, cell_salt_high: 3400 }
    expect(dilution({ ...cell, salt_test_error: 200 }).number('drain_fraction')).toBeCloseTo(0.385, 3)
    expect(dilution({ ...cell, salt_test_error: 200, most_salt: 3400 }).number('drain_fraction')).toBeCloseTo(0.346, 3)
  })
})

describe('how much and how long', () => {
  const third = { volume: 48, salt: 3000, most_salt: 2000, fill_salt: 0, water_depth_mean: 1.5, depth_shallow: 1.2 }

  test('a third of 48 m³ is 16 m³ and 0.5 m down the wall (by hand)', () => {
    const { number } = dilution({ ...third, drain_flow: 8, fill_flow: 2 })
    expect(number('drain_volume')).toBeCloseTo(16, 9)
    expect(number('drain_depth')).toBeCloseTo(0.5, 9)
    expect([number('drain_time'), number('fill_time')]).toEqual([expect.closeTo(2, 9), expect.closeTo(8, 9)])
  })

  test('a liner is not laid dry without a word', () => {
    expect(dilution({ ...third, shell: 'vinyl' }).notices('drain_depth')).toEqual([])
    expect(dilution({ ...third, shell: 'vinyl', depth_shallow: 0.7 }).notices('drain_depth')).toEqual([
      'liner:drain_depth',
    ])
  })
})

describe('the fill water', () => {
  test('at its limit is unreachable, with a sentence', () => {
    const { problem, said } = dilution({ salt: 3500, most_salt: 3000, fill_salt: 3000, volume: 50 })
    expect(problem('drain_fraction')).toMatchObject({ code: 'unreachable', facts: { quantity: 'salt' } })
    expect(said('drain_volume')).toBe(
      'The fill water holds as much salt as the limit, or takes the pool over it. Use other fill water.',
    )
  })

  test('that takes another quantity over its limit is unreachable too', () => {
    const spoilt = dilution({ ...stabilizer, salt: 2000, most_salt: 2500, fill_salt: 3000 })
    expect(spoilt.problem('drain_fraction')).toMatchObject({ code: 'unreachable', facts: { quantity: 'salt' } })
  })

  test('that was not tested is missing, not none', () => {
    expect(dilution({ salt: 5200, most_salt: 3400 }).missing('drain_fraction')).toEqual(['fill_salt'])
    const other = dilution({ ...stabilizer, calcium_hardness: 300 })
    expect(other.missing('calcium_hardness_after_dilution')).toEqual(['fill_calcium_hardness'])
    expect(other.missing('ph_after_dilution')).toEqual(
      expect.arrayContaining(['fill_ph', 'fill_temperature', 'fill_total_alkalinity']),
    )
  })

  test('the same water as the pool’s leaves its pH (mass balance)', () => {
    const water = { ph: 7.6, temperature: 25, total_alkalinity: 80, calcium_hardness: 250, salt: 1000 }
    const { number } = dilution({
      ...water,
      volume: 50,
      cyanuric_acid: 0,
      tds: 2000,
      most_tds: 1500,
      fill_ph: 7.6,
      fill_temperature: 25,
      fill_total_alkalinity: 80,
      fill_calcium_hardness: 250,
      fill_salt: 1000,
      fill_cyanuric_acid: 0,
      fill_tds: 1000,
    })
    expect(number('drain_fraction')).toBeCloseTo(0.5, 9)
    expect(number('ph_after_dilution')).toBeCloseTo(7.6, 6)
  })
})

test('law: after it every quantity with a limit is within it, and what governs is at its own', () => {
  const quantities = [
    ['salt', 'salt', 9000],
    ['cyanuric_acid', 'cyanuric_acid', 300],
    ['calcium_hardness', 'calcium_hardness', 1200],
    ['tds', 'tds', 12_000],
  ] as const
  const each = fc.tuple(
    fc.double({ min: 0.05, max: 1, noNaN: true }),
    fc.option(fc.double({ min: 0.3, max: 1.2, noNaN: true }), { nil: undefined }),
    fc.double({ min: 0, max: 0.9, noNaN: true }),
  )
  fc.assert(
    fc.property(fc.tuple(each, each, each, each), fc.double({ min: 0.05, max: 0.5, noNaN: true }), (all, largest) => {
      const given: Record<string, number | undefined> = { volume: 50, largest_single_drain: largest }
      all.forEach(([now, most, fill], i) => {
        const [name = '', , top = 1] = quantities[i] ?? []
        given[name] = now * top
        given[`most_${name}`] = most === undefined ? undefined : most * now * top
        given[`fill_${name}`] = fill * (most ?? 1) * now * top
      })
      if (all.every(([, most]) => most === undefined)) return
      const { number, value } = dilution(given)
      const rounds = number('drain_rounds')
      expect((1 - number('drain_round_share')) ** rounds).toBeCloseTo(1 - number('drain_fraction'), 9)
      expect(number('drain_round_share')).toBeLessThanOrEqual(largest * (1 + 1e-8))
      for (const [name] of quantities) {
        const most = given[`most_${name}`]
        if (most === undefined) continue
        const after = number(`${name}_after_dilution`)
        expect(after).toBeLessThanOrEqual(Math.max(most, 0) * (1 + 1e-9))
        if (value('dilution_governs') === name) expect(after).toBeCloseTo(most, 6)
      }
    }),
    { seed, numRuns: 200 },
  )
})

test('fill values of 0 are no missing ones', () => {
  const { number } = dilution({ ...NONE, ...stabilizer, calcium_hardness: 360, salt: 3600 })
  expect(number('calcium_hardness_after_dilution')).toBeCloseTo(100, 9)
  expect(number('salt_after_dilution')).toBeCloseTo(1000, 9)
})
