import { titleOf } from './axis'
import type { Compared } from './compared'
import { type Drawing, fitted, type Mark, widthOf } from './drawing'
import { endsOf, scaleOf } from './scale'

const ROW = 22
const HEAD = 30
const FOOT = 38

/** A panel a quantity, a line a scenario: its wanted range as a block, its value as a dot with the figure beside it. */
export function drawComparison(title: string, panels: readonly Compared[], width: number): Drawing {
  const marks: Mark[] = []
  const names = panels.flatMap(({ rows }) => rows.map(({ name }) => widthOf(name)))
  const left = Math.min(Math.max(60, ...names) + 12, width * 0.36)
  const right = width - 84
  let top = 0
  for (const { axis, rows } of panels) {
    marks.push({ kind: 'text', colour: 'ink', x: 0, y: top + 16, text: titleOf(axis), anchor: 'start', serif: true })
    const first = top + HEAD
    const bottom = first + rows.length * ROW
    const figures = rows.flatMap(({ value }) => (value === null ? [] : [axis.shown(value)]))
    const limits = rows
      .flatMap(({ band }) => [band?.low, band?.high])
      .map((end) => (end === undefined ? end : axis.shown(end)))
    const ends = endsOf(figures, limits, axis.step)
    const scale = ends && scaleOf(ends, [left + 10, right - 10], 'across', true)
    for (const { at } of scale?.ticks ?? [])
      marks.push({ kind: 'line', colour: 'rule', x1: at, x2: at, y1: first, y2: bottom })
    rows.forEach(({ name, value, says, band, out }, i) => {
      const y = first + i * ROW + ROW / 2
      marks.push({ kind: 'text', colour: 'grey', x: left - 4, y: y + 4, text: fitted(name, left - 8), anchor: 'end' })
      if (!scale) {
        marks.push({ kind: 'text', colour: 'grey', x: left + 10, y: y + 4, text: says, anchor: 'start' })
        return
      }
      const within = (x: number) => Math.min(Math.max(x, left), right)
      if (band) {
        const from = band.low === undefined ? left : within(scale.at(axis.shown(band.low)))
        const to = band.high === undefined ? right : within(scale.at(axis.shown(band.high)))
        marks.push({ kind: 'block', colour: 'band', x: from, y: y - 7, width: Math.max(0, to - from), height: 14 })
      }
      marks.push({ kind: 'line', colour: 'axis', x1: left, x2: right, y1: y, y2: y })
      if (value !== null) marks.push({ kind: 'dot', colour: out ? 'warm' : 'ink', x: scale.at(axis.shown(value)), y })
      const text = fitted(says, width - right - 8)
      marks.push({ kind: 'text', colour: out ? 'warm' : 'ink', x: width, y: y + 4, text, anchor: 'end' })
    })
    for (const { at, label } of scale?.ticks ?? [])
      marks.push({ kind: 'text', colour: 'grey', x: at, y: bottom + 15, text: label, anchor: 'middle' })
    top = bottom + FOOT
  }
  return { width, height: top + 4, title, marks }
}
