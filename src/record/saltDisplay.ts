import type { Notebook } from '../notebook/notebook'
import type { ErrorOf } from './errorOf'
import { type Interval, intersection } from './interval'
import { type Measured, measuredOf } from './measured'

/** A sample in which the cell's display and another test read the same water. */
export interface DisplayPair {
  readonly sample: Measured
  readonly display: number
  readonly test: number
  /** half width of the test */
  readonly error: number
}

/** What to add to a cell's salt display, mg/L, by all samples that have both readings. */
export type DisplaySays =
  | { readonly kind: 'none' }
  /** the display agrees with the tests within their error */
  | { readonly kind: 'right'; readonly pairs: readonly DisplayPair[] }
  | { readonly kind: 'off'; readonly pairs: readonly DisplayPair[]; readonly by: Interval & { readonly value: number } }
  /** no one correction suits all of them */
  | { readonly kind: 'wanders'; readonly pairs: readonly DisplayPair[] }

/** mg/L as NaCl of a mg/L of chloride: 58.443 / 35.453. */
const SALT_PER_CHLORIDE = 58.443 / 35.453

/**
 * Each pair allows corrections within the test's error; the display is taken to be off by the same in all of them.
 */
export function saltDisplay(notebook: Pick<Notebook, 'samples'>, errorOf: ErrorOf): DisplaySays {
  const pairs = measuredOf(notebook).flatMap((sample): readonly DisplayPair[] => {
    const display = sample.figures.get('cell_salt_reading')
    const chloride = sample.figures.get('chloride')
    const test = sample.figures.get('salt') ?? (chloride === undefined ? undefined : chloride * SALT_PER_CHLORIDE)
    if (display === undefined || test === undefined) return []
    const error = errorOf('salt', test, sample.methods.get('salt'))
    return error === undefined ? [] : [{ sample, display, test, error }]
  })
  if (pairs.length === 0) return { kind: 'none' }
  let all: Interval | null = { low: Number.NEGATIVE_INFINITY, high: Number.POSITIVE_INFINITY }
  for (const { display, test, error } of pairs) {
    all = all && intersection(all, { low: test - display - error, high: test - display + error })
  }
  if (all === null) return { kind: 'wanders', pairs }
  if (all.low <= 0 && all.high >= 0) return { kind: 'right', pairs }
  return { kind: 'off', pairs, by: { ...all, value: (all.low + all.high) / 2 } }
}
