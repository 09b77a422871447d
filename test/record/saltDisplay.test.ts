import { describe, expect, test } from 'vitest'
import type { Sample } from '../../src/notebook/notebook'
import { saltDisplay } from '../../src/record/saltDisplay'

const sample = (day: number, figures: Readonly<Record<string, number>>): Sample => ({
  id: `s${day}`,
  name: `s${day}`,
  date: `2026-05-0${day}`,
  elsewhere: false,
  readings: Object.fromEntries(
    Object.entries(figures).map(([name, canonical]) => [
      name,
      { kind: 'value', entered: String(canonical), unit: 'mg/L', canonical },
    ]),
  ),
})
const says = (...pairs: readonly (readonly [display: number, test: number])[]) =>
  saltDisplay(
    {
      samples: Object.fromEntries(
        pairs.map(([display, salt], i) => [`s${i + 1}`, sample(i + 1, { cell_salt_reading: display, salt })]),
      ),
    },
    () => 200,
  )

describe('a cell’s salt display', () => {
  test('that reads 600 low three times is off by 400 to 800, cut to what all allow (by hand)', () => {
    expect(says([2600, 3200], [2500, 3150], [2700, 3250])).toMatchObject({
      kind: 'off',
      by: { low: 450, high: 750, value: 600 },
    })
  })
  test('within the test’s error is right', () => expect(says([3000, 3150]).kind).toBe('right'))
  test('that no one correction suits wanders', () => expect(says([3000, 3600], [3600, 3000]).kind).toBe('wanders'))
  test('without a second reading says nothing', () =>
    expect(saltDisplay({ samples: { s1: sample(1, { cell_salt_reading: 3000 }) } }, () => 200).kind).toBe('none'))
  test('is held against chloride too: 2000 mg/L are 3297 mg/L of salt (58.443 / 35.453, by hand)', () => {
    const found = saltDisplay({ samples: { s1: sample(1, { cell_salt_reading: 2500, chloride: 2000 }) } }, () => 200)
    expect(found).toMatchObject({ kind: 'off', by: { value: expect.closeTo(797, 0) } })
  })
})
