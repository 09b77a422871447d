import type { Book } from '../shell/book'

/** The date of the sample that a scenario is tied to; empty where there is none. Tracked. */
export function testedOn(book: Book, scenario: string): string {
  const id = book.scenario(scenario)?.sample
  return (id && book.sample(id)?.date) || ''
}
