import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { Doubt } from '../../src/study/doubt'
import { openEnds } from '../../src/study/firmness'
import { normalQuantile } from '../../src/study/normalQuantile'
import { uncertainty } from '../../src/study/uncertainty'
import { evaluateWith, sheetOf, WATER } from './evaluateWith'

const ROOT_3 = Math.sqrt(3)
const four = ['x1', 'x2', 'x3', 'x4']

/** Y = X1 + X2 + X3 + X4, all of mean 0: the additive model of JCGM 101:2008, clause 9.2. */
async function additive(of: (i: number) => Pick<Doubt, 'half' | 'distribution'>, count = 10_000) {
  const doubts = four.map((quantity, i): Doubt => ({ quantity, value: 0, least: -1e9, most: 1e9, ...of(i) }))
  const column = new Map(four.map((name) => [name, 0]))
  const evaluate = evaluateWith(sheetOf(four, { y: four.join(' + ') }))
  const [interval] = await uncertainty(evaluate, { column, doubts, outputs: ['y'], count })
  if (!interval?.ends || interval.deviation === null) throw new Error('no interval')
  return { low: interval.ends[0], high: interval.ends[1], deviation: interval.deviation }
}

describe('the additive model of JCGM 101:2008 (supplement 1 to the GUM), 9.2', () => {
  test('9.2.2, four normal variables of standard deviation 1: u = 2, 95 % within ±3.92', async () => {
    const { low, high, deviation } = await additive(() => ({ half: 1.959964, distribution: 'normal' }))
    expect(deviation).toBeCloseTo(2, 1)
    expect(low).toBeGreaterThan(-4.02)
    expect(low).toBeLessThan(-3.82)
    expect(high).toBeGreaterThan(3.82)
    expect(high).toBeLessThan(4.02)
  })

  test('9.2.3, four rectangular ones of standard deviation 1: ±2√3 (2 - (3/5)^(1/4)), which is ±3.88', async () => {
    const closed = 2 * ROOT_3 * (2 - 0.6 ** 0.25)
    expect(closed).toBeCloseTo(3.88, 2)
    const { low, high, deviation } = await additive(() => ({ half: ROOT_3, distribution: 'rectangular' }))
    expect(deviation).toBeCloseTo(2, 1)
    expect(Math.abs(low + closed)).toBeLessThan(0.08)
    expect(Math.abs(high - closed)).toBeLessThan(0.08)
  })

  test('9.2.4, one of them ten times as wide: u = 10.1 and ±17.0, where a normal curve would say ±19.9', async () => {
    const { low, high, deviation } = await additive((i) => ({
      half: i === 3 ? 10 * ROOT_3 : ROOT_3,
      distribution: 'rectangular',
    }))
    expect(deviation).toBeCloseTo(10.1, 0)
    expect(Math.abs(low + 17)).toBeLessThan(0.15)
    expect(Math.abs(high - 17)).toBeLessThan(0.15)
  })
})

describe('the closed form of a linear quantity', () => {
  // salt mass = (target - salt) x volume; with salt rectangular within ±200 mg/L and the volume taken as exact, 95 % of
  // the masses lie within ±0.95 x 200 mg/L x 60 m³ = ±11.4 kg of 36 kg
  test('salt mass with one doubt', async () => {
    const doubts: Doubt[] = [
      { quantity: 'salt', value: 2600, half: 200, distribution: 'rectangular', least: 0, most: 45_000 },
    ]
    const [interval] = await uncertainty(evaluateWith(), { column: WATER, doubts, outputs: ['salt_mass'] })
    expect(interval?.ends?.[0]).toBeCloseTo(36 - 11.4, 6)
    expect(interval?.ends?.[1]).toBeCloseTo(36 + 11.4, 6)
    // a rectangular distribution of half width a has the standard deviation a / √3 (JCGM 100:2008, 4.3.7)
    expect(interval?.deviation).toBeCloseTo((200 * 0.06) / ROOT_3, 3)
  })

  test('the variances of independent doubts add', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.double({ min: 0.1, max: 5, noNaN: true }), { minLength: 4, maxLength: 4 }),
        async (halves) => {
          const { deviation } = await additive((i) => ({ half: halves[i] ?? 1, distribution: 'rectangular' }), 1000)
          const closed = Math.hypot(...halves.map((half) => half / ROOT_3))
          expect(Math.abs(deviation / closed - 1)).toBeLessThan(0.06)
        },
      ),
      { seed: 11, numRuns: process.env.LONG ? 200 : 10 },
    )
  })
})

describe('an interval', () => {
  const doubt: Doubt = {
    quantity: 'free_chlorine',
    value: 0.2,
    half: 0.5,
    distribution: 'rectangular',
    least: 0,
    most: 500,
  }

  test('is the same for the same water, and another for another seed', async () => {
    const run = (seed: number) =>
      uncertainty(evaluateWith(), {
        column: WATER,
        doubts: [doubt, { ...doubt, quantity: 'ph', value: 7.6, half: 0.1 }],
        outputs: ['hocl'],
        count: 100,
        seed,
      })
    expect(await run(1)).toEqual(await run(1))
    expect(await run(1)).not.toEqual(await run(2))
  })

  test('never leaves what is possible', async () => {
    const [interval] = await uncertainty(evaluateWith(), { column: WATER, doubts: [doubt], outputs: ['free_chlorine'] })
    expect(interval?.ends).toEqual([0, expect.closeTo(0.675, 3)])
  })

  test('says how many columns have no answer, and why', async () => {
    const evaluate = evaluateWith(sheetOf(['x'], { y: 'SQRT(x)' }))
    const [interval] = await uncertainty(evaluate, {
      column: new Map([['x', 0]]),
      doubts: [{ quantity: 'x', value: 0, half: 1, distribution: 'rectangular', least: -9, most: 9 }],
      outputs: ['y'],
    })
    expect(interval?.refused).toBe(500)
    expect(interval?.why).not.toBe(null)
  })

  test('nothing to say where nothing has an answer', async () => {
    const [interval] = await uncertainty(evaluateWith(), { column: new Map(), doubts: [], outputs: ['lsi'], count: 10 })
    expect(interval).toMatchObject({ ends: null, deviation: null, refused: 10, why: { code: 'missing' } })
  })
})

test('a limit inside the interval leaves the verdict open; its own ends do not', () => {
  expect(openEnds([7.1, 7.3], { low: 7.2, high: 7.8 })).toEqual([7.2])
  expect(openEnds([7, 8], { low: 7.2, high: 7.8 })).toEqual([7.2, 7.8])
  expect(openEnds([7.2, 7.8], { low: 7.2, high: 7.8 })).toEqual([])
  expect(openEnds([7.3, 7.4], { low: 7.2 })).toEqual([])
})

test('quantiles of the normal distribution, as printed in tables (JCGM 100:2008, table G.1)', () => {
  expect(normalQuantile(0.5)).toBeCloseTo(0, 9)
  expect(normalQuantile(0.84134475)).toBeCloseTo(1, 6)
  expect(normalQuantile(0.95)).toBeCloseTo(1.645, 3)
  expect(normalQuantile(0.975)).toBeCloseTo(1.96, 3)
  expect(normalQuantile(0.995)).toBeCloseTo(2.576, 3)
  expect(normalQuantile(0.00135)).toBeCloseTo(-3, 3)
})
