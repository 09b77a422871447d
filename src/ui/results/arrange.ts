import { filterTest, type RowFilter } from './rowFilter'
import { createSlices, type Slices } from './slices'
import { sortRows } from './sortRows'
import type { TableColumn } from './tableColumn'

export interface Sorting {
  readonly column: string
  readonly down: boolean
}

/**
 * The samples that meet all conditions, in the wanted order; null when it was given up on the way. Without a sorting
 * they stand as in the file. What has no value comes last, whichever way the rest is sorted.
 */
export async function arrange(
  count: number,
  columns: readonly TableColumn[],
  filters: readonly RowFilter[],
  sorting: Sorting | null,
  givenUp: () => boolean,
): Promise<Int32Array<ArrayBuffer> | null> {
  const slices = createSlices()
  const rows = new Int32Array(count)
  const tests = filters.map((filter) => filterTest(filter, columns))
  let kept = 0
  for (let sample = 0; sample < count; sample++) {
    if (tests.every((test) => test(sample))) rows[kept++] = sample
    if (sample % 1_024 !== 0 || !slices.due()) continue
    await slices.pause()
    if (givenUp()) return null
  }
  const shown = rows.slice(0, kept)
  const by = sorting && columns.find(({ key }) => key === sorting.column)
  if (!sorting || !by) return shown
  const after = await comparison(by, shown, count, sorting.down, slices, givenUp)
  return after && (await sortRows(shown, after, slices, givenUp)) ? shown : null
}

/** Keys are taken once; comparing them must be cheap. */
async function comparison(
  { kind, number, text }: TableColumn,
  rows: Int32Array,
  count: number,
  down: boolean,
  slices: Slices,
  givenUp: () => boolean,
): Promise<((a: number, b: number) => boolean) | null> {
  const numbers = kind === 'figure' ? new Float64Array(count) : null
  const texts: string[] = []
  for (let i = 0; i < rows.length; i++) {
    const sample = rows[i] ?? 0
    if (numbers) numbers[sample] = number(sample)
    else texts[sample] = text(sample).toLowerCase()
    if (i % 1_024 !== 0 || !slices.due()) continue
    await slices.pause()
    if (givenUp()) return null
  }
  const key = (sample: number): number | string => (numbers ? (numbers[sample] ?? Number.NaN) : (texts[sample] ?? ''))
  const lacks = (value: number | string) => value === '' || Number.isNaN(value)
  return (a, b) => {
    const [x, y] = [key(a), key(b)]
    if (lacks(x) || lacks(y)) return lacks(x) && !lacks(y)
    return down ? x < y : x > y
  }
}
