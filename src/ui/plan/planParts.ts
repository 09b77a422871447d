import type { Notebook } from '../../notebook/notebook'
import type { Shelf, ShelfProduct } from '../../planner/shelf'
import type { Definition, TargetSet } from '../../worksheet/definition'
import { TARGET_SET } from '../../worksheet/withTargets'
import type { Book } from '../shell/book'

/** The products of a notebook as the planner takes them. */
export function onHand(shelf: Notebook['shelf']): Shelf {
  return Object.values(shelf).map(({ id: _, ...item }) => item as ShelfProduct)
}

/** The sets of ranges that the notebook's own worksheets bring, and that the catalog took in. */
export function soundSets(book: Book, worksheets: Notebook['worksheets']): readonly TargetSet[] {
  const row = book.catalog().quantities.get(TARGET_SET)?.row
  const offered = new Set<string>(row && 'choices' in row ? row.choices : [])
  return Object.values(worksheets).flatMap((definition) =>
    ((definition as Partial<Definition>).targets ?? []).filter(({ id }) => offered.has(id)),
  )
}
