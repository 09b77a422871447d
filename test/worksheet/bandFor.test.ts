import { describe, expect, test } from 'vitest'
import { bandFor, conditionsOf } from '../../src/worksheet/bandFor'
import { distance, judge } from '../../src/worksheet/judge'
import { input } from './definitions'

const row = input('a', {
  target: [
    { when: { shell: ['plaster'], age: { below: 28 } }, low: 1, source: 'young' },
    { when: { shell: ['plaster', 'tile'] }, low: 2, source: 'hard' },
    { when: { age: { from: 100, below: 200 } }, low: 3, source: 'old' },
  ],
})

describe('the band of a row', () => {
  test.each([
    [{ shell: 'plaster', age: 27.9 }, 'young'],
    [{ shell: 'plaster', age: 28 }, 'hard'],
    [{ shell: 'plaster' }, 'hard'],
    [{ shell: 'tile', age: 1 }, 'hard'],
    [{ shell: 'vinyl', age: 100 }, 'old'],
    [{ age: 200 }, undefined],
    [{ shell: 'vinyl' }, undefined],
    [{ shell: 3, age: '150' }, undefined],
    [{}, undefined],
  ])('for %j is %s', (values, source) => {
    expect(bandFor(row, values)?.source).toBe(source)
  })

  test('hangs on the quantities that its conditions name', () => {
    expect(conditionsOf(row)).toEqual(['shell', 'age'])
    expect(conditionsOf(input('b'))).toEqual([])
  })
})

describe('a value against a band', () => {
  test.each([
    [1.9, { low: 2, high: 3 }, 'below', -0.1],
    [2, { low: 2, high: 3 }, 'within', 0],
    [3, { low: 2, high: 3 }, 'within', 0],
    [3.5, { low: 2, high: 3 }, 'above', 0.5],
    [-99, { high: 3 }, 'within', 0],
    [99, { low: 2 }, 'within', 0],
  ] as const)('%d in %j is %s', (value, ends, side, off) => {
    const band = { ...ends, source: 's' }
    expect(judge(value, band)).toBe(side)
    expect(distance(value, band)).toBeCloseTo(off, 12)
  })
})
