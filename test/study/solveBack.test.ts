import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { Evaluate } from '../../src/study/evaluate'
import { type Solved, type SolveOrder, solveBack } from '../../src/study/solveBack'
import { evaluateWith, sheetOf, single, WATER } from './evaluateWith'

const ORDER = {
  column: new Map(),
  input: 'x',
  from: -10,
  to: 10,
  output: 'y',
  wanted: 0,
  tolerance: 1e-6,
  canonicalUnit: '1',
  unit: '1',
} satisfies SolveOrder

/** Of a formula with one input x. */
function of(formula: string, change: Partial<SolveOrder> = {}): Promise<Solved> {
  return solveBack(evaluateWith(sheetOf(['x'], { y: formula })), { ...ORDER, ...change })
}
const inputs = ({ solutions }: Solved) => solutions.map(({ input }) => input)

describe('known inverses', () => {
  test('the salt that a mass of salt is for: shortfall x volume / purity', async () => {
    // closed form: 30 kg in 60 m³ raise salt by 500 mg/L, so the target is 2600 + 500
    const solved = await solveBack(evaluateWith(), {
      column: WATER,
      input: 'target_salt',
      from: 1000,
      to: 6000,
      output: 'salt_mass',
      wanted: 30,
      tolerance: 1e-4,
      canonicalUnit: 'mg/L as NaCl',
      unit: 'mg/L as NaCl',
    })
    expect(inputs(solved)).toEqual([3100])
    expect(solved.solutions[0]?.output).toBe(single(new Map([...WATER, ['target_salt', 3100]]), 'salt_mass'))
  })

  test('in the unit of the reader, few figures: 59 °F', async () => {
    const solved = await solveBack(evaluateWith(sheetOf(['x'], { y: 'x * 2' })), {
      ...ORDER,
      wanted: 30,
      from: 0,
      to: 40,
      canonicalUnit: '°C',
      unit: '°F',
    })
    expect(inputs(solved)).toEqual([15])
  })

  test('a line, wherever it runs and however steep', async () => {
    await fc.assert(
      fc.asyncProperty(
        // evenly spread: doubles as such are mostly all but zero
        fc.integer({ min: -80_000_000, max: 80_000_000 }).map((n) => n / 10_000_000),
        fc.integer({ min: -40, max: 40 }).map((n) => n / 10),
        async (root, steep) => {
          const slope = 10 ** steep
          const evaluate: Evaluate = (columns) =>
            Promise.resolve(columns.map((c) => [{ value: slope * (Number(c.get('x')) - root) }]))
          const { solutions } = await solveBack(evaluate, { ...ORDER, tolerance: 1e-6 * slope })
          expect(solutions).toHaveLength(1)
          expect(Math.abs(solutions[0]?.output ?? 99)).toBeLessThanOrEqual(1e-6 * slope)
          expect(Math.abs((solutions[0]?.input ?? 99) - root)).toBeLessThanOrEqual(1.01e-6)
        },
      ),
      { seed: 5, numRuns: process.env.LONG ? 2000 : 60 },
    )
  })
})

describe('several', () => {
  test('two, by a formula row: (x - 1)(x + 3)', async () => {
    expect(inputs(await of('(x - 1) * (x + 3)'))).toEqual([-3, 1])
  })

  test('two, nearer each other than the points of the first look', async () => {
    expect(inputs(await of('(x - 1.001) * (x - 1.002)', { tolerance: 1e-9 }))).toEqual([1.001, 1.002])
  })

  test('one that only touches', async () => {
    const solved = await of('(x - 2.345) ^ 2')
    expect(solved.solutions).toHaveLength(1)
    expect(solved.solutions[0]?.input).toBeCloseTo(2.345, 3)
  })

  test('at the ends of the span', async () => {
    expect(inputs(await of('(x - 10) * (x + 10)'))).toEqual([-10, 10])
  })

  test('a stretch that gives it throughout', async () => {
    const solved = await of('MAX(0; x - 3.3)', { tolerance: 1e-9 })
    expect(solved.solutions).toEqual([])
    expect(solved.stretches).toHaveLength(1)
    expect(solved.stretches[0]?.from).toBe(-10)
    expect(solved.stretches[0]?.to).toBeCloseTo(3.3, 8)
  })

  test('whole steps: from where three becomes four to where it was two', async () => {
    const solved = await of('ROUNDUP(x; 0)', { wanted: 3, from: 0 })
    expect(solved.stretches).toHaveLength(1)
    expect(solved.stretches[0]?.from).toBeCloseTo(2, 9)
    expect(solved.stretches[0]?.to).toBeCloseTo(3, 9)
  })
})

describe('none', () => {
  test('both ends are shown, and the nearest', async () => {
    const solved = await of('x ^ 2 + 1')
    expect(solved.solutions).toEqual([])
    expect(solved.ends).toMatchObject([{ value: 101 }, { value: 101 }])
    expect(solved.nearest).toEqual({ input: 0, output: 1 })
  })

  test('a pole is no solution', async () => {
    const solved = await of('1 / (x - 0.123)')
    expect(solved.solutions).toEqual([])
    // told as a leap, or as a place without an answer where a column happens to divide by nothing
    const told = [...solved.jumps.map(({ at }) => at), ...solved.silent.map(({ from }) => from)]
    expect(told).toEqual([expect.closeTo(0.123, 9)])
  })

  test('a leap is none either, and is told', async () => {
    const solved = await of('IF(x < 0.777; -1; 2)')
    expect(solved.solutions).toEqual([])
    expect(solved.jumps).toMatchObject([{ before: -1, after: 2 }])
    expect(solved.jumps[0]?.at).toBeCloseTo(0.777, 9)
  })

  test('a stretch without an answer is told, with why', async () => {
    const solved = await of('SQRT(x) + 1')
    expect(solved.silent).toHaveLength(1)
    expect(solved.silent[0]).toMatchObject({ from: -10 })
    expect(solved.ends[0]).toHaveProperty('problem')
    expect(solved.nearest).toEqual({ input: 0, output: 1 })
  })

  test('nothing at all has an answer', async () => {
    const solved = await solveBack(evaluateWith(), { ...ORDER, input: 'ph', output: 'lsi', from: 7, to: 8 })
    expect(solved.solutions).toEqual([])
    expect(solved.nearest).toBe(null)
    expect(solved.silent).toMatchObject([{ from: 7, to: 8, why: { code: 'missing' } }])
  })
})
