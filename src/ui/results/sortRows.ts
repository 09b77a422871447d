import type { Slices } from './slices'

/** How many steps lie between two looks at the clock. */
const STEPS = 4_096

/**
 * Sorts samples in place by a stable merge sort that gives the page its turns; the library's own sort would hold it up for
 * as long as it takes. `after(a, b)`: whether a belongs behind b. False when it was given up on the way.
 */
export async function sortRows(
  rows: Int32Array<ArrayBuffer>,
  after: (a: number, b: number) => boolean,
  slices: Slices,
  givenUp: () => boolean,
): Promise<boolean> {
  let from = rows
  let to = new Int32Array(rows.length)
  let steps = 0
  for (let width = 1; width < rows.length; width *= 2) {
    for (let start = 0; start < rows.length; start += 2 * width) {
      const middle = Math.min(start + width, rows.length)
      const end = Math.min(start + 2 * width, rows.length)
      let left = start
      let right = middle
      for (let at = start; at < end; at++) {
        const a = from[left] ?? 0
        const b = from[right] ?? 0
        const takeRight = left >= middle || (right < end && after(a, b))
        to[at] = takeRight ? b : a
        if (takeRight) right++
        else left++
        if (++steps % STEPS !== 0 || !slices.due()) continue
        await slices.pause()
        if (givenUp()) return false
      }
    }
    ;[from, to] = [to, from]
  }
  if (from !== rows) rows.set(from)
  return true
}
