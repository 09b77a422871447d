import { hasValue } from '../../engine/outcome'
import type { Value } from '../../functions/define'
import { bandFor } from '../../worksheet/bandFor'
import type { Band, Row } from '../../worksheet/definition'
import type { Book } from '../shell/book'

export type Settings = readonly (readonly [quantity: string, value: Value])[]

export const NO_SETTINGS: Settings = []

/** What the table needs of the open notebook to show a quantity. */
export interface Reader {
  row(quantity: string): Row | undefined
  /** the unit code that it is shown in */
  unit(quantity: string): string
  /** the band that holds under the settings that the samples were worked out with */
  band(row: Row): Band | undefined
}

/** Tracked where the caller is. */
export function readerOf(book: Book, settings: Settings): Reader {
  const values = Object.fromEntries(settings)
  return {
    row: (quantity) => book.catalog().quantities.get(quantity)?.row,
    unit: (quantity) => book.unit(quantity),
    band: (row) => bandFor(row, values),
  }
}

/**
 * What the baseline says of pool, targets and products: every input that is no reading of a sample. With it the samples
 * are looked at as if their water were in that pool.
 */
export function baselineSettings(book: Book): Settings {
  const baseline = book.baseline()
  return [...book.catalog().quantities.values()].flatMap(({ name, worksheet, formula }) => {
    if (formula || worksheet === 'sample') return []
    const outcome = book.outcome(baseline, name)
    return hasValue(outcome) ? [[name, outcome.value] as const] : []
  })
}
