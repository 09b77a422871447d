import { XmlDocument } from 'libxml2-wasm'
import { describe, expect, test } from 'vitest'
import type { Line } from '../../src/study/sweep'
import { axisFor } from '../../src/ui/study/axis'
import { drawComparison } from '../../src/ui/study/drawComparison'
import type { Drawing } from '../../src/ui/study/drawing'
import { drawSweep } from '../../src/ui/study/drawSweep'
import { endsOf, scaleOf } from '../../src/ui/study/scale'
import { inShort } from '../../src/ui/study/span'
import type { StudyMessage, StudyRequest } from '../../src/ui/study/studies'
import { createStudyJob } from '../../src/ui/study/studyJob'
import { svgText } from '../../src/ui/study/svgText'
import type { SweepModel } from '../../src/ui/study/sweepModel'
import { convert } from '../../src/units/convert'
import { unitsOfKind } from '../../src/units/unit'
import { shippedCatalog } from '../../src/worksheet/shippedCatalog'
import { single, WATER } from '../study/evaluateWith'

const rowOf = (name: string) => shippedCatalog().quantities.get(name)?.row
const axis = (name: string, unit: string) => axisFor(name, rowOf(name), unit)

function model(curves: readonly (readonly (number | null)[])[], name = 'As tested'): SweepModel {
  return {
    title: 'Index <against> pH & "more"',
    input: axis('ph', 'pH'),
    at: [7, 7.2, 7.4, 7.6, 7.8],
    panels: [
      {
        axis: axis('lsi', '1'),
        band: { low: -0.3, high: 0.3, source: 'by hand' },
        wanted: 'wanted −0.3 to 0.3',
        curves: curves.map((values, pen) => ({
          scenario: String(pen),
          name,
          pen,
          values,
          gaps: [],
          now: { at: 7.4, value: 0 },
        })),
      },
    ],
  }
}
const rising = [-0.6, -0.3, 0, 0.3, 0.6]
const marksOf = <K extends Drawing['marks'][number]['kind']>({ marks }: Drawing, kind: K) =>
  marks.filter((mark): mark is Extract<typeof mark, { kind: K }> => mark.kind === kind)

describe('the span of a chart', () => {
  // by the definition of the US gallon, 3.785411784 L, and of the degree Fahrenheit
  test.each([
    ['pump_flow', 'US gal/min', [1, 30], [4, 132]],
    ['temperature', '°F', [0, 40], [32, 104]],
    ['ph', 'pH', [6.8, 8.4], [6.8, 8.4]],
  ] as const)('%s in %s', (name, unit, span, wanted) => {
    const row = rowOf(name)
    if (!row) throw new Error(name)
    const shown = inShort(span, row, unit).map((end) => convert(end, row.unit, unit))
    expect(shown[0]).toBeCloseTo(wanted[0], 9)
    expect(shown[1]).toBeCloseTo(wanted[1], 9)
  })

  test('stays within what the row accepts', () => {
    for (const { row } of shippedCatalog().quantities.values()) {
      if (!('accept' in row)) continue
      for (const { code } of unitsOfKind(row.unit)) {
        const [from, to] = inShort(row.accept, row, code)
        expect(from, `${row.name} ${code}`).toBeGreaterThanOrEqual(row.accept[0])
        expect(to, `${row.name} ${code}`).toBeLessThanOrEqual(row.accept[1])
        expect(to).toBeGreaterThan(from)
      }
    }
  })
})

describe('a drawn sweep', () => {
  test('stands where its figures say', () => {
    const { drawing, xs, y, left, right } = drawSweep(model([rising]), 800)
    expect([xs[0], xs.at(-1)]).toEqual([left, right])
    expect(xs[2]).toBeCloseTo((left + right) / 2, 6)
    // the ring lies on the line, the band between its limits
    const [ring] = marksOf(drawing, 'ring')
    expect(ring).toMatchObject({ x: xs[2], y: y[0]?.(0) })
    const band = marksOf(drawing, 'block')[0]
    expect(band?.y).toBeCloseTo(y[0]?.(0.3) ?? 0, 6)
    expect((band?.y ?? 0) + (band?.height ?? 0)).toBeCloseTo(y[0]?.(-0.3) ?? 0, 6)
  })

  test('has a gap where there is no answer, and a dot for a point between two gaps', () => {
    const [path] = marksOf(drawSweep(model([[-0.6, -0.3, null, 0.3, 0.6]]), 800).drawing, 'path')
    expect(path?.d.match(/M/g)).toHaveLength(2)
    const alone = drawSweep(model([[null, 0.1, null, null, null]]), 800).drawing
    expect(marksOf(alone, 'dot')).toHaveLength(1)
  })

  test('names that meet make room for each other, and stay in sight', () => {
    const { drawing } = drawSweep(model(Array.from({ length: 12 }, () => rising)), 800)
    const names = marksOf(drawing, 'text').filter(({ text }) => text === 'As tested')
    const ys = names.map(({ y }) => y).sort((a, b) => a - b)
    expect(names).toHaveLength(12)
    expect(ys.every((y, i) => i === 0 || y - (ys[i - 1] ?? 0) >= 14)).toBe(true)
    expect(ys.every((y) => y > 0 && y < drawing.height)).toBe(true)
  })

  test('more lines than names have room for', () => {
    const { drawing } = drawSweep(model(Array.from({ length: 60 }, () => rising)), 800)
    const names = marksOf(drawing, 'text').filter(({ text }) => text === 'As tested')
    expect(names.length).toBeGreaterThan(10)
    expect(names.every(({ y }) => y > 0 && y < drawing.height)).toBe(true)
    expect(marksOf(drawing, 'path')).toHaveLength(60)
  })

  test('nothing to draw is drawn as nothing', () => {
    const { drawing, y } = drawSweep(model([[null, null, null, null, null]].map((values) => values)), 800)
    expect(JSON.stringify(drawing)).not.toMatch(/null|NaN/)
    expect(y[0]).not.toBe(undefined)
  })
})

describe('a picture file', () => {
  const awkward = `O'Hara <b>&amp; "sons"\u0000 </title><script>alert(1)</script>`

  test.each([
    ['sweep', drawSweep(model([rising, [...rising].reverse()], awkward), 800).drawing],
    [
      'comparison',
      drawComparison(
        awkward,
        [
          {
            axis: axis('ph', 'pH'),
            rows: [
              { name: awkward, value: 7.9, says: '7.90 high', band: { low: 7.2, high: 7.8, source: '' }, out: true },
              { name: 'none', value: null, says: 'no answer', band: undefined, out: false },
            ],
          },
        ],
        800,
      ),
    ],
  ])('of a %s is well-formed, of its own, and runs nothing', (_, drawing) => {
    const text = svgText(drawing)
    const document = XmlDocument.fromString(text)
    const names = new Set(document.find('//*').map((node) => ('name' in node ? node.name : '')))
    document.dispose()
    for (const name of names) expect(['svg', 'title', 'rect', 'text', 'g', 'line', 'path', 'circle']).toContain(name)
    expect(text).not.toMatch(/NaN|undefined|Infinity|href=|style=/)
  })
})

describe('a scale', () => {
  test('has round figures', () => {
    expect(scaleOf([7, 8], [0, 500], 'across', false).ticks.map(({ label }) => label)).toEqual([
      '7.0',
      '7.2',
      '7.4',
      '7.6',
      '7.8',
      '8.0',
    ])
  })
  test('takes the ends of a band in where they are near', () => {
    expect(endsOf([0, 1], [-0.5, 30], 0.01)).toEqual([-0.5, 1])
    expect(endsOf([], [1, 2], 0.01)).toBe(null)
  })
  test('does not show what the figures do not tell apart', () => {
    expect(endsOf([90, 90 + 1e-12], [], 1)).toEqual([expect.closeTo(88, 9), expect.closeTo(92, 9)])
    expect(endsOf([0, 0], [], 1)).toEqual([0, 4])
  })
  test('one value is no line', () => {
    const { at, ticks } = scaleOf([3, 3], [0, 100], 'up', true)
    expect(Number.isFinite(at(3))).toBe(true)
    expect(ticks.length).toBeGreaterThan(1)
  })
})

describe('the worker of studies', () => {
  const own = { worksheets: {}, rows: {} }
  const request = (id: number, points: number): StudyRequest => ({
    ask: 'study',
    id,
    own,
    study: {
      kind: 'sweep',
      order: {
        columns: [WATER],
        input: 'ph',
        values: Array.from({ length: points }, (_, i) => 7 + i / points),
        outputs: ['lsi'],
      },
    },
  })

  test('answers with what single columns give', async () => {
    const messages: StudyMessage[] = []
    await createStudyJob((message) => messages.push(message))(request(1, 2))
    const [message] = messages
    if (message?.kind !== 'done') throw new Error('not done')
    const [line] = message.result as readonly Line[]
    expect(line?.values).toEqual([7, 7.5].map((ph) => single(new Map([...WATER, ['ph', ph]]), 'lsi')))
  })

  test('stops when it is told to, and answers what is asked meanwhile', async () => {
    const messages: StudyMessage[] = []
    const job = createStudyJob((message) => messages.push(message))
    const long = job(request(1, 100_000))
    await new Promise((next) => setTimeout(next, 20))
    await job(request(2, 2))
    await job({ ask: 'stop', id: 1 })
    await long
    expect(messages.map(({ kind, id }) => [kind, id])).toEqual([
      ['done', 2],
      ['stopped', 1],
    ])
  })

  test('a quantity that no worksheet has is a gap, never a throw', async () => {
    const messages: StudyMessage[] = []
    const order = { columns: [WATER], input: 'ph', values: [7, 8], outputs: ['of_no_worksheet'] }
    const job = createStudyJob((message) => messages.push(message))
    await job({ ask: 'study', id: 1, own, study: { kind: 'sweep', order } })
    expect(messages).toMatchObject([{ kind: 'done', result: [{ values: [null, null], gaps: [{ from: 0, to: 1 }] }] }])
  })
})
