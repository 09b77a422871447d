import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { isFailure } from '../../src/chemistry/failure'
import { massAsRead } from '../../src/chemistry/massAsRead'
import { volumeFromRise } from '../../src/chemistry/volumeFromRise'
import { volumeInterval } from '../../src/chemistry/volumeInterval'

describe('mass as a reading shows it', () => {
  test.each([
    // definitions and IUPAC molar masses, by hand
    ['salt', 'salt', 20, 'kg', 100, 'mass_percent', 20, 20],
    ['cyanuric_acid', 'cyanuric_acid', 2, 'kg', 100, 'mass_percent', 2, 2],
    // 100.087 / 147.014 of a kilogram of dihydrate is calcium as CaCO3
    ['calcium_hardness', 'calcium_chloride_dihydrate', 1, 'kg', 100, 'mass_percent', 0.6808, 0.6808],
    // trade table: 10 lb of 77 % flakes (anhydrous content) is 100/110.98 × 7.7 lb as CaCO3
    ['calcium_hardness', 'calcium_chloride', 10, 'kg', 77, 'mass_percent', 6.944, 6.944],
    // boron in boric acid: 10.81 / 61.833 = 17.48 % (handbook figure)
    ['borate', 'boric_acid', 1, 'kg', 100, 'mass_percent', 0.1748, 0.1748],
    // boron in borax: 4 × 10.81 / 381.37 = 11.34 % (handbook figure)
    ['borate', 'borax_decahydrate', 1, 'kg', 100, 'mass_percent', 0.1134, 0.1134],
    // dichlor dihydrate: 129.075 / 255.98 is cyanuric acid
    ['cyanuric_acid', 'dichlor', 1, 'kg', 100, 'mass_percent', 0.5042, 0.5042],
    // NaOCl brings as much NaCl as it has, and as much again once it is used up: 58.443 / 74.442 each
    ['salt', 'sodium_hypochlorite', 1, 'kg', 10, 'mass_percent', 0.0785, 0.157],
    ['calcium_hardness', 'salt', 20, 'kg', 100, 'mass_percent', 0, 0],
  ] as const)('%s of %s', (reading, id, amount, unit, strength, basis, least, most) => {
    const mass = massAsRead(reading, id, amount, unit, strength, basis)
    if (isFailure(mass)) throw new Error(mass.failure)
    expect(mass[0]).toBeCloseTo(least, 3)
    expect(mass[1]).toBeCloseTo(most, 3)
  })

  test('litres of a solid and a strength without sense are refused', () => {
    expect(massAsRead('salt', 'salt', 5, 'L', 100, 'mass_percent')).toMatchObject({ failure: 'out_of_range' })
    expect(massAsRead('salt', 'salt', 5, 'kg', 300, 'mass_percent')).toMatchObject({ failure: 'out_of_range' })
    expect(massAsRead('salt', 'salt', Number.NaN, 'kg', 100, 'mass_percent')).toMatchObject({ failure: 'not_a_number' })
  })
})

describe('the volume by a rise', () => {
  test('50 kg that raise salt by 1000 mg/L within 400: 50 / 1.4 to 50 / 0.6 (by hand)', () => {
    expect(volumeFromRise('salt', [50, 50], 2000, 3000, 400)).toEqual([
      expect.closeTo(50 / 1.4, 9),
      expect.closeTo(50 / 0.6, 9),
    ])
  })

  test('a rise within its error has no upper end, and one that cannot be is refused', () => {
    expect(volumeFromRise('salt', [50, 50], 2000, 2300, 400)).toEqual([
      expect.closeTo(50 / 0.7, 9),
      Number.POSITIVE_INFINITY,
    ])
    expect(volumeFromRise('salt', [50, 50], 3000, 2500, 400)).toMatchObject({ failure: 'no_such_water' })
  })

  test('is the salt rise of the pool worksheet where both have ends', () => {
    const figure = (min: number, max: number) => fc.double({ min, max, noNaN: true })
    fc.assert(
      fc.property(figure(1, 500), figure(0, 4000), figure(700, 3000), figure(0, 300), (mass, before, rise, error) => {
        const ours = volumeFromRise('salt', [mass, mass], before, before + rise, error)
        const theirs = volumeInterval({
          measured: undefined,
          byShape: undefined,
          saltAdded: mass,
          saltBefore: before,
          saltAfter: before + rise,
          riseError: error,
        })
        if (isFailure(ours) || isFailure(theirs)) throw new Error('refused')
        expect(ours[0]).toBeCloseTo(Number(theirs[0]), 6)
        expect(ours[1] / Number(theirs[1])).toBeCloseTo(1, 6)
      }),
      { seed: 20260514, numRuns: 300 },
    )
  })
})
