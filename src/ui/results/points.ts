import type { Slices } from './slices'
import type { TableColumn } from './tableColumn'

/** The shown samples that have both values, in the order in which the table shows them. */
export interface Points {
  readonly across: TableColumn
  readonly up: TableColumn
  readonly samples: Int32Array
  /** places in the table's rows */
  readonly rows: Int32Array
  readonly x: Float64Array
  readonly y: Float64Array
  /** smallest and largest; undefined where there is no point */
  readonly span: { readonly x: readonly [number, number]; readonly y: readonly [number, number] } | undefined
}

/** Null when it was given up on the way. */
export async function pointsOf(
  across: TableColumn,
  up: TableColumn,
  samples: Int32Array,
  slices: Slices,
  givenUp: () => boolean,
): Promise<Points | null> {
  const rows = new Int32Array(samples.length)
  const found = new Int32Array(samples.length)
  const x = new Float64Array(samples.length)
  const y = new Float64Array(samples.length)
  let count = 0
  let [left, right, low, high] = [Infinity, -Infinity, Infinity, -Infinity]
  for (let row = 0; row < samples.length; row++) {
    const sample = samples[row] ?? 0
    const a = across.number(sample)
    const b = up.number(sample)
    if (!Number.isNaN(a) && !Number.isNaN(b)) {
      rows[count] = row
      found[count] = sample
      x[count] = a
      y[count++] = b
      left = Math.min(left, a)
      right = Math.max(right, a)
      low = Math.min(low, b)
      high = Math.max(high, b)
    }
    if (row % 1_024 !== 0 || !slices.due()) continue
    await slices.pause()
    if (givenUp()) return null
  }
  const span = count === 0 ? undefined : ({ x: [left, right], y: [low, high] } as const)
  return {
    across,
    up,
    samples: found.slice(0, count),
    rows: rows.slice(0, count),
    x: x.slice(0, count),
    y: y.slice(0, count),
    span,
  }
}
