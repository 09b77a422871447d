import { bisectLeft } from 'd3-array'
import { marks } from './marks'
import type { Slices } from './slices'
import type { TableColumn } from './tableColumn'

export interface Summary {
  readonly count: {
    readonly value: number
    readonly missing: number
    readonly censored: number
    readonly refused: number
  }
  /** in the canonical unit, of the values; null where there is none */
  readonly spread: Spread | null
}

export interface Spread {
  readonly min: number
  readonly max: number
  /** the 5th, 25th, 50th, 75th and 95th percentile */
  readonly percentiles: readonly number[]
  readonly bins: readonly Bin[]
}

export interface Bin {
  readonly from: number
  readonly to: number
  readonly count: number
}

export const PERCENTILES = [5, 25, 50, 75, 95] as const
const BINS = 24

/** What the rows have in a column, as counts and as a spread; null when it was given up on the way. */
export async function summarise(
  column: TableColumn,
  rows: Int32Array,
  slices: Slices,
  givenUp: () => boolean,
): Promise<Summary | null> {
  const count = { value: 0, missing: 0, censored: 0, refused: 0 }
  const values = new Float64Array(rows.length)
  for (let i = 0; i < rows.length; i++) {
    const sample = rows[i] ?? 0
    const standing = column.standing(sample)
    if (standing === 'value') values[count.value] = column.number(sample)
    count[standing]++
    if (i % 1_024 !== 0 || !slices.due()) continue
    await slices.pause()
    if (givenUp()) return null
  }
  return { count, spread: spreadOf(values.subarray(0, count.value).filter((value) => !Number.isNaN(value))) }
}

export function spreadOf(values: Float64Array): Spread | null {
  const sorted = values.toSorted()
  const min = sorted[0]
  const max = sorted.at(-1)
  if (min === undefined || max === undefined) return null
  const percentiles = PERCENTILES.map((share) => percentile(sorted, share / 100))
  const edges = [min, ...marks(min, max, BINS).filter((edge) => edge > min && edge < max), max]
  const bins = edges.slice(0, -1).map((from, i): Bin => {
    const to = edges[i + 1] ?? max
    // the last one has its upper end too
    const end = i === edges.length - 2 ? sorted.length : bisectLeft(sorted, to)
    return { from, to, count: end - bisectLeft(sorted, from) }
  })
  return { min, max, percentiles, bins }
}

/** Between neighbouring values in proportion: Hyndman and Fan (1996), definition 7. The library's takes plain arrays only. */
function percentile(sorted: Float64Array, share: number): number {
  const place = (sorted.length - 1) * share
  const below = sorted[Math.floor(place)] ?? Number.NaN
  const above = sorted[Math.ceil(place)] ?? below
  return below + (above - below) * (place - Math.floor(place))
}
