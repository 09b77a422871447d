import { curveStep, line } from 'd3-shape'
import { say } from '../../words/say'
import { titleOf } from './axis'
import { type Colour, type Drawing, fitted, type Mark, widthOf } from './drawing'
import { endsOf, type Scale, scaleOf } from './scale'
import type { Curve, Panel, SweepModel } from './sweepModel'

/** A drawn sweep, and where things stand in it, for the read-out. */
export interface DrawnSweep {
  readonly drawing: Drawing
  readonly left: number
  readonly right: number
  readonly top: number
  readonly bottom: number
  /** of each point along the span */
  readonly xs: readonly number[]
  /** where a panel's value stands; the panels as in the model */
  readonly y: readonly (((value: number) => number) | null)[]
}

const HEIGHT = { alone: 300, one: 190, empty: 30 }
const LEFT = 60
const ABOVE = 30
const BELOW = 18
const BETWEEN_NAMES = 15

/** Lines are told apart by their names, and by their strokes where they cross. */
const PENS: readonly { readonly colour: Colour; readonly dash: string }[] = [
  { colour: 'ink', dash: '' },
  { colour: 'pen', dash: '' },
  { colour: 'pen', dash: '7 4' },
  { colour: 'grey', dash: '2 3' },
  { colour: 'ink', dash: '9 3 2 3' },
  { colour: 'grey', dash: '' },
  { colour: 'pen', dash: '2 3' },
  { colour: 'ink', dash: '4 3' },
]

export function penOf(index: number): (typeof PENS)[number] {
  return PENS[index % PENS.length] ?? { colour: 'ink', dash: '' }
}

/** One panel a quantity over a common axis, the names of the scenarios at the ends of their lines. */
export function drawSweep(model: SweepModel, width: number): DrawnSweep {
  const longest = Math.max(0, ...model.panels.flatMap(({ curves }) => curves.map(({ name }) => widthOf(name))))
  const right = width - Math.min(longest + 14, width < 560 ? 112 : 180)
  const full = model.panels.length === 1 ? HEIGHT.alone : HEIGHT.one
  const shown = model.at.map((value) => model.input.shown(value))
  const x = scaleOf([shown[0] ?? 0, shown.at(-1) ?? 1], [LEFT, right], 'across', false)
  const marks: Mark[] = []
  let bottom = -BELOW
  const y = model.panels.map((panel) => {
    const isEmpty = panel.curves.every(({ values, now }) => now === null && values.every((value) => value === null))
    const height = isEmpty ? HEIGHT.empty : full
    const top = bottom + BELOW + ABOVE
    bottom = top + height
    return drawPanel(marks, panel, model, x, { top, height, right, width })
  })
  for (const { at, label } of x.ticks)
    marks.push({ kind: 'text', colour: 'grey', x: at, y: bottom + 20, text: label, anchor: 'middle' })
  marks.push({
    kind: 'text',
    colour: 'ink',
    x: right,
    y: bottom + 40,
    text: titleOf(model.input),
    anchor: 'end',
    serif: true,
  })
  return {
    drawing: { width, height: bottom + 48, title: model.title, marks },
    left: LEFT,
    right,
    top: ABOVE,
    bottom,
    xs: shown.map((value) => x.at(value)),
    y: y.map((scale, i) => {
      const axis = model.panels[i]?.axis
      return scale && axis ? (value) => scale.at(axis.shown(value)) : null
    }),
  }
}

interface Place {
  readonly top: number
  readonly height: number
  readonly right: number
  readonly width: number
}

function drawPanel(marks: Mark[], panel: Panel, model: SweepModel, x: Scale, place: Place): Scale | null {
  const { axis, band, curves, wanted } = panel
  const { top, height, right } = place
  const bottom = top + height
  marks.push({ kind: 'text', colour: 'ink', x: 0, y: top - 12, text: titleOf(axis), anchor: 'start', serif: true })
  const values = curves.flatMap(({ values: all, now }) => [...all, now?.value ?? null])
  const figures = values.filter((value) => value !== null).map((value) => axis.shown(value))
  const limit = (value: number | undefined) => (value === undefined ? undefined : axis.shown(value))
  const ends = endsOf(figures, [limit(band?.low), limit(band?.high)], axis.step)
  const scale = ends && scaleOf(ends, [bottom, top], 'up', true)
  if (scale && band) {
    drawBand(marks, panel, scale, place)
    const swatch = right - 0.9 * widthOf(wanted) - 14
    marks.push({ kind: 'block', colour: 'band', x: swatch, y: top - 22, width: 10, height: 10 })
    marks.push({ kind: 'text', colour: 'grey', x: right, y: top - 12, text: wanted, anchor: 'end' })
  }
  for (const { at, label } of scale?.ticks ?? []) {
    marks.push({ kind: 'line', colour: 'rule', x1: LEFT, x2: right, y1: at, y2: at })
    marks.push({ kind: 'text', colour: 'grey', x: LEFT - 8, y: at + 4, text: label, anchor: 'end' })
  }
  marks.push({ kind: 'line', colour: 'axis', x1: LEFT, x2: right, y1: bottom, y2: bottom })
  for (const { at } of x.ticks) marks.push({ kind: 'line', colour: 'axis', x1: at, x2: at, y1: bottom, y2: bottom + 4 })
  if (scale) drawCurves(marks, panel, model, x, scale, place)
  else
    marks.push({
      kind: 'text',
      colour: 'grey',
      x: LEFT,
      y: top + 14,
      text: say('page.study.no_answer'),
      anchor: 'start',
    })
  return scale
}

function drawBand(marks: Mark[], { axis, band }: Panel, scale: Scale, { top, height, right }: Place): void {
  const within = (y: number) => Math.min(Math.max(y, top), top + height)
  const high = band?.high === undefined ? top : within(scale.at(axis.shown(band.high)))
  const low = band?.low === undefined ? top + height : within(scale.at(axis.shown(band.low)))
  if (low - high < 1) return
  marks.push({ kind: 'block', colour: 'band', x: LEFT, y: high, width: right - LEFT, height: low - high })
}

function drawCurves(
  marks: Mark[],
  { axis, curves }: Panel,
  model: SweepModel,
  x: Scale,
  scale: Scale,
  place: Place,
): void {
  const px = (i: number) => x.at(model.input.shown(model.at[i] ?? 0))
  const path = line<number | null>()
    .defined((value) => value !== null)
    .x((_, i) => Math.round(px(i) * 10) / 10)
    .y((value) => Math.round(scale.at(axis.shown(value ?? 0)) * 10) / 10)
  // whole numbers go in steps
  const isWhole =
    axis.step === 1 && curves.every(({ values }) => values.every((value) => value === null || Number.isInteger(value)))
  if (isWhole) path.curve(curveStep)
  const [from, to] = [model.at[0] ?? 0, model.at.at(-1) ?? 0]
  for (const { values, pen, now } of curves) {
    const { colour, dash } = penOf(pen)
    marks.push({ kind: 'path', colour, dash, d: path(values) ?? '' })
    // a point between two gaps is no line, and yet an answer
    values.forEach((value, i) => {
      if (value !== null && (values[i - 1] ?? null) === null && (values[i + 1] ?? null) === null)
        marks.push({ kind: 'dot', colour, x: px(i), y: scale.at(axis.shown(value)) })
    })
    if (now && now.at >= from && now.at <= to)
      marks.push({ kind: 'ring', colour, x: x.at(model.input.shown(now.at)), y: scale.at(axis.shown(now.value)) })
  }
  drawNames(marks, curves, px, (value) => scale.at(axis.shown(value)), place)
}

/** Each name where its line ends; where ends meet, the names make room for each other. */
function drawNames(
  marks: Mark[],
  curves: readonly Curve[],
  px: (i: number) => number,
  py: (value: number) => number,
  { top, height, width }: Place,
): void {
  // where there are more than there is room for, the first are named; the read-out and the table name all
  const room = Math.floor((height + 15) / BETWEEN_NAMES)
  const ends = curves
    .slice(0, room)
    .flatMap(({ name, pen, values }) => {
      const last = values.findLastIndex((value) => value !== null)
      return last < 0 ? [] : [{ name, pen, x: px(last), y: py(values[last] ?? 0) }]
    })
    .sort((a, b) => a.y - b.y)
  let free = top - 4
  const placed = ends.map((end) => {
    const y = Math.max(end.y, free)
    free = y + BETWEEN_NAMES
    return { ...end, y }
  })
  const over = Math.max(0, (placed.at(-1)?.y ?? 0) - (top + height))
  for (const { name, pen, x, y } of placed) {
    const text = fitted(name, width - x - 10)
    marks.push({ kind: 'text', colour: penOf(pen).colour, x: x + 8, y: y - over + 4, text, anchor: 'start' })
  }
}
