import { hasValue } from '../engine/outcome'
import type { Book } from './shell/book'

/** The volume with both ends, between which it stands. */
export interface VolumeSpan {
  readonly value: number
  readonly low: number
  readonly high: number
}

/**
 * The volume of a scenario; null where it has none. Typed over, it is what it was said to be: the ends that the worksheet works out are
 * those of another volume then, and hold only where an end was typed over as well. Tracked.
 */
export function volumeIn(book: Pick<Book, 'outcome' | 'source'>, scenario: string): VolumeSpan | null {
  const of = (name: string) => {
    const outcome = book.outcome(scenario, name)
    return hasValue(outcome) && typeof outcome.value === 'number' ? outcome.value : null
  }
  const [value, low, high] = [of('volume'), of('volume_low'), of('volume_high')]
  if (value === null || low === null || high === null) return null
  const said = (name: string) => isTypedOver(book, scenario, name)
  if (said('volume') && !said('volume_low') && !said('volume_high')) return { value, low: value, high: value }
  return { value, low: Math.min(low, value), high: Math.max(high, value) }
}

/** Whether something stands over what the notebook works out, typed here or in the baseline that is followed. Tracked. */
export function isTypedOver(book: Pick<Book, 'source'>, scenario: string, name: string): boolean {
  return book.source(scenario, name).cell !== null
}
