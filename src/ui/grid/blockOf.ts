import type { CellBlock } from '../../notebook/clearCells'
import type { Book } from '../shell/book'

/** The selected cells as the document knows them. */
export function blockOf(book: Book): CellBlock {
  const { rows, scenarios } = book.selection.block()
  return { quantities: rows.map(({ quantity }) => quantity.name), scenarios }
}
