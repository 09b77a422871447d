import { describe, expect, test } from 'vitest'
import { withGiven } from '../../src/study/evaluate'
import { spanPoints } from '../../src/study/spanPoints'
import { sweep } from '../../src/study/sweep'
import { evaluateWith, sheetOf, single, WATER } from './evaluateWith'

describe('the points of a span', () => {
  test('are even, both ends exactly', () => {
    expect(spanPoints(0, 1, 5)).toEqual([0, 0.25, 0.5, 0.75, 1])
    const tenths = spanPoints(7, 8.1, 12)
    expect([tenths[0], tenths.at(-1), tenths.length]).toEqual([7, 8.1, 12])
    expect(spanPoints(1, 2, 0)).toEqual([1, 2])
  })
})

describe('a sweep', () => {
  test('is what each point gives by itself, for every scenario and output', async () => {
    const columns = [WATER, withGiven(WATER, 'temperature', 15)]
    const values = spanPoints(6.8, 8.4, 9)
    const outputs = ['lsi', 'calcite_si', 'hocl']
    const lines = await sweep(evaluateWith(), { columns, input: 'ph', values, outputs })
    expect(lines.map(({ column, output }) => [column, output])).toEqual(
      columns.flatMap((_, column) => outputs.map((output) => [column, output])),
    )
    for (const { column, output, values: along, gaps, now } of lines) {
      const given = columns[column] ?? WATER
      expect(along).toEqual(values.map((value) => single(withGiven(given, 'ph', value), output)))
      expect(gaps).toEqual([])
      expect(now).toEqual({ at: 7.6, value: single(given, output) })
    }
  })

  test('has a gap with its reason where there is no answer', async () => {
    const catalog = sheetOf(['x'], { y: '1 / x' })
    const [line] = await sweep(evaluateWith(catalog), {
      columns: [new Map()],
      input: 'x',
      values: [-1, 0, 1],
      outputs: ['y'],
    })
    expect(line?.values).toEqual([-1, null, 1])
    expect(line?.gaps).toMatchObject([{ from: 1, to: 1, why: { code: 'division_by_zero' } }])
    expect(line?.now).toBe(null)
  })

  test('two gaps for the same reason are two', async () => {
    const catalog = sheetOf(['x'], { y: '1 / (x * (x - 2))' })
    const order = { columns: [new Map()], input: 'x', values: [-1, 0, 1, 2, 3], outputs: ['y'] }
    const [line] = await sweep(evaluateWith(catalog), order)
    expect(line?.gaps.map(({ from, to }) => [from, to])).toEqual([
      [1, 1],
      [3, 3],
    ])
  })

  test('joins neighbouring points without an answer, and keeps reasons apart', async () => {
    const [line] = await sweep(evaluateWith(), {
      columns: [new Map([...WATER].filter(([name]) => name !== 'calcium_hardness'))],
      input: 'ph',
      values: spanPoints(7, 8, 5),
      outputs: ['lsi'],
    })
    expect(line?.gaps).toMatchObject([{ from: 0, to: 4, why: { code: 'missing' } }])
  })
})
