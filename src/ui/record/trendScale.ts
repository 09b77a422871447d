import { scaleLinear, scaleTime } from 'd3-scale'
import type { Band } from '../../worksheet/definition'

/** One reading of one test, with what the last plan before it foretold where it did. */
export interface TrendPoint {
  /** place among the dated tests */
  readonly test: number
  readonly time: number
  readonly value: number
  readonly foretold: number | null
}

export interface TrendScale {
  x(time: number): number
  y(value: number): number
  /** the band in pixels, inside the panel */
  readonly band: { readonly top: number; readonly height: number } | null
}

export interface TrendFrame {
  readonly left: number
  readonly right: number
  readonly top: number
  readonly bottom: number
}

/** Empty room over and under the line, as a share of its span. */
const ROOM = 0.15

/** Where things stand in the panel of one reading; the band counts for the span where it lies near the line. */
export function trendScale(
  points: readonly TrendPoint[],
  span: readonly [first: number, last: number],
  band: Pick<Band, 'low' | 'high'> | undefined,
  frame: TrendFrame,
): TrendScale {
  const values = points.flatMap(({ value, foretold }) => (foretold === null ? [value] : [value, foretold]))
  const ends = [band?.low, band?.high].filter((end) => end !== undefined)
  const all = [...values, ...ends]
  const [least, most] = [Math.min(...all), Math.max(...all)]
  const room = (most - least || Math.abs(most) || 1) * ROOM
  const y = scaleLinear([least - room, most + room], [frame.bottom, frame.top])
  const [first, last] = span
  const x = scaleTime([first, Math.max(last, first + 86_400_000)], [frame.left, frame.right])
  const within = (pixel: number) => Math.max(frame.top, Math.min(frame.bottom, pixel))
  const top = band && within(band.high === undefined ? frame.top : y(band.high))
  const bottom = band && within(band.low === undefined ? frame.bottom : y(band.low))
  return {
    x: (time) => x(time),
    y: (value) => y(value),
    band: top === undefined || bottom === undefined ? null : { top, height: Math.max(0, bottom - top) },
  }
}
