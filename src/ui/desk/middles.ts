import { hasValue } from '../../engine/outcome'
import type { Value } from '../../functions/define'
import { bandFor, conditionsOf } from '../../worksheet/bandFor'
import type { Row } from '../../worksheet/definition'
import type { Book } from '../shell/book'

/** Targets that the step plan doses for, each with the reading whose range it is taken from. */
const TARGETS = {
  target_ph: 'ph',
  target_total_alkalinity: 'total_alkalinity',
  target_free_chlorine: 'free_chlorine',
  target_calcium_hardness: 'calcium_hardness',
  target_cyanuric_acid: 'cyanuric_acid',
} as const

export const TARGET_NAMES = Object.keys(TARGETS) as readonly (keyof typeof TARGETS)[]

/**
 * What to aim for where nobody says: the middle of the range for this pool, or its low end where it has only that. Where the
 * range has a most alone, or none, there is nothing to aim for. Tracked.
 */
export function middleOf(book: Book, target: keyof typeof TARGETS): { value: number; source: string } | null {
  const row = book.catalog().quantities.get(TARGETS[target])?.row
  const band = row && bandFor(row, conditions(book, row))
  if (band?.low === undefined) return null
  const value = band.high === undefined ? band.low : (band.low + band.high) / 2
  return { value: Number(value.toPrecision(6)), source: band.source }
}

/** What the range hangs on; stabilizer that was not read yet counts as the stabilizer that is wanted. */
function conditions(book: Book, row: Row): Readonly<Record<string, Value>> {
  const values: Record<string, Value> = {}
  for (const quantity of conditionsOf(row)) {
    const outcome = book.outcome(book.baseline(), quantity)
    const wanted = quantity === 'cyanuric_acid' ? middleOf(book, 'target_cyanuric_acid')?.value : undefined
    if (hasValue(outcome)) values[quantity] = outcome.value
    else if (wanted !== undefined) values[quantity] = wanted
  }
  return values
}
