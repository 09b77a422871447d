import { extent } from 'd3-array'
import { scaleLinear } from 'd3-scale'
import { formatValue } from '../../units/format'

/** Figures along one direction of a chart, as they are shown, to pixels. */
export interface Scale {
  at(shown: number): number
  readonly ticks: readonly { readonly at: number; readonly label: string }[]
}

/** Pixels between two ticks, about. */
const BETWEEN = { across: 84, up: 44 }

/**
 * @param ends the least and the largest figure
 * @param pixels where they stand
 * @param nice whether the ends may be moved out to round figures
 */
export function scaleOf(
  ends: readonly [number, number],
  pixels: readonly [number, number],
  direction: keyof typeof BETWEEN,
  nice: boolean,
): Scale {
  const count = Math.max(2, Math.round(Math.abs(pixels[1] - pixels[0]) / BETWEEN[direction]))
  const [low, high] =
    ends[0] < ends[1] ? ends : [ends[0] - (Math.abs(ends[0]) || 1) * 0.1, ends[1] + (Math.abs(ends[1]) || 1) * 0.1]
  const scale = scaleLinear().domain([low, high]).range(pixels)
  if (nice) scale.nice(count)
  const ticks = scale.ticks(count)
  const step = Math.abs((ticks[1] ?? 1) - (ticks[0] ?? 0))
  const decimals = Math.max(0, -Math.floor(Math.log10(step) + 1e-9))
  return {
    at: (shown) => scale(shown),
    ticks: ticks.map((tick) => ({ at: scale(tick), label: formatValue(tick, '1', '1', decimals) })),
  }
}

/** A direction is never so near that less than the last place of a figure is seen: that would be the rounding of machines. */
const FEWEST_STEPS = 4

/**
 * The figures that a direction has to show: all values, and the ends of the wanted band where they are not so far away that the
 * values would be pressed into a line.
 * @param step the smallest difference that the figures tell apart
 */
export function endsOf(
  values: readonly number[],
  band: readonly (number | undefined)[],
  step: number,
): readonly [number, number] | null {
  const [least, most] = extent(values)
  if (least === undefined || most === undefined) return null
  const short = Math.max(0, FEWEST_STEPS * step - (most - least)) / 2
  // what cannot be negative is not shown as if it could
  const low = least >= 0 ? Math.max(0, least - short) : least - short
  const high = Math.max(most, low + FEWEST_STEPS * step)
  const room = high - low
  const near = band.filter((end): end is number => end !== undefined && end > low - room && end < high + room)
  return [Math.min(low, ...near), Math.max(high, ...near)]
}
