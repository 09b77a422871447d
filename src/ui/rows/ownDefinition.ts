import type { Notebook } from '../../notebook/notebook'
import { own } from '../../notebook/own'
import type { Problem } from '../../words/problem'
import type { Definition } from '../../worksheet/definition'
import { isDefinition, readDefinition } from '../../worksheet/readDefinition'
import type { Book } from '../shell/book'
import { tried } from './tried'

/** A worksheet of the reader's own as it is kept, without the rows that were added to it; null for a shipped one. */
export function ownDefinition(notebook: Notebook, worksheet: string): Definition | null {
  const json = own(notebook.worksheets, worksheet)
  if (json === undefined) return null
  const definition = readDefinition(json, worksheet)
  return isDefinition(definition) ? definition : null
}

/** Puts a changed definition in its place, if the worksheets still fit together with it. */
export async function changeOwnWorksheet(book: Book, definition: Definition, quantity = ''): Promise<Problem | null> {
  const edit = { type: 'put_worksheet', id: definition.id, definition } as const
  return (await tried(book, edit, quantity)) ?? book.dispatch(edit)
}
