import { convert } from '../../units/convert'
import { numberText } from '../../words/written'
import { isSpan, marks } from './marks'
import type { TableColumn } from './tableColumn'

/** One axis of the chart: values in the canonical unit to pixels, and the marks along it in the shown unit. */
export interface ChartScale {
  readonly min: number
  readonly max: number
  at(value: number): number
  readonly marks: readonly { readonly at: number; readonly label: string }[]
}

/** Empty room at both ends, as a share of the span. */
const MARGIN = 0.04

/** @param from pixel of the smallest value; `to` that of the largest */
export function chartScale(
  { row, unit }: TableColumn,
  smallest: number,
  largest: number,
  from: number,
  to: number,
): ChartScale {
  const room = (isSpan(smallest, largest) ? largest - smallest : Math.abs(largest) || 1) * MARGIN
  const [min, max] = [smallest - room, largest + room]
  const at = (value: number) => from + ((value - min) * (to - from)) / (max - min)
  const canonical = row?.unit ?? unit
  const shown = (value: number) => numberOr(convert(value, canonical, unit), value)
  const back = (value: number) => numberOr(convert(value, unit, canonical), value)
  const steps = marks(shown(min), shown(max), Math.max(3, Math.round(Math.abs(to - from) / 90)))
  const step = (steps[1] ?? 1) - (steps[0] ?? 0)
  const decimals = Math.min(20, Math.max(0, -Math.floor(Math.log10(Math.abs(step)) + 1e-9)))
  const written = steps.map((mark) => ({
    at: at(back(mark)),
    label: numberText(mark, { minimumFractionDigits: decimals, maximumFractionDigits: decimals, useGrouping: 'min2' }),
  }))
  return { min, max, at, marks: written }
}

function numberOr(converted: unknown, value: number): number {
  return typeof converted === 'number' ? converted : value
}
