import { reopen } from '../../units/reopen'
import { say } from '../../words/say'
import { announce } from '../shell/announce'
import type { Book } from '../shell/book'
import { formulas, prepareFormulas } from '../shell/formulas'

/** Opens the selected cell for writing: with what stands in it, or with the character that was typed. */
export function openEditor(book: Book, typed?: string): void {
  const cell = book.selection.cell()
  if (!cell) return
  if (!book.writable()) {
    announce(say('page.read_only_short'))
    return
  }
  if (typed !== undefined) {
    book.selection.edit({ text: typed, fresh: true })
    return
  }
  const name = cell.row.quantity.name
  if (book.source(cell.scenario, name).cell?.kind === 'formula' && !formulas()) {
    void prepareFormulas().then(() => formulas() && openEditor(book))
    return
  }
  book.selection.edit({ text: standing(book, cell.scenario, name), fresh: false })
}

/** What was typed reopens as it was typed. */
function standing(book: Book, scenario: string, quantity: string): string {
  const { cell } = book.source(scenario, quantity)
  switch (cell?.kind) {
    case 'value':
      return reopen(cell, book.unit(quantity))
    case 'limit':
      return `${cell.side === 'above' ? '>' : '<'}${reopen(cell, book.unit(quantity))}`
    case 'formula':
      return `=${formulas()?.toShown(cell.text, book.notebook()) ?? cell.text}`
    case 'not_taken':
      return '-'
    default:
      return ''
  }
}
