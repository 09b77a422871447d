import type { Notebook } from '../../notebook/notebook'
import type { Doubt } from '../../study/doubt'
import { doubtsOf } from '../../study/doubtsOf'
import type { Column } from '../../study/evaluate'
import type { Book } from '../shell/book'
import { volumeIn } from '../volumeIn'

/** What is in doubt of a scenario, among these quantities. Tracked. */
export function bookDoubts(
  book: Book,
  scenario: string,
  column: Column,
  names: ReadonlySet<string>,
  precisions: Notebook['precisions'],
): readonly Doubt[] {
  return doubtsOf(
    {
      column,
      catalog: book.catalog(),
      precisions,
      methods: methodsIn(book, scenario, names),
      volume: names.has('volume') ? volumeIn(book, scenario) : null,
    },
    names,
  )
}

/** The tests that took the readings, where a reading says it. Tracked. */
export function methodsIn(book: Book, scenario: string, names: ReadonlySet<string>): ReadonlyMap<string, string> {
  const methods = new Map<string, string>()
  for (const name of names) {
    const { cell } = book.source(scenario, name)
    if (cell?.kind === 'value' && cell.method !== undefined) methods.set(name, cell.method)
  }
  return methods
}
