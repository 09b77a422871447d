import type { Book } from '../shell/book'

/**
 * The quantities of a scenario in which a formula is typed. A column takes what it gives now: it does not follow when an input
 * is varied, which has to be said. Tracked.
 */
export function heldFormulas(book: Book, scenario: string, names: ReadonlySet<string>): readonly string[] {
  return [...names].filter((name) => book.source(scenario, name).cell?.kind === 'formula')
}
