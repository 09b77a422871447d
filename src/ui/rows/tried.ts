import { apply } from '../../notebook/apply'
import type { Edit } from '../../notebook/edit'
import { isProblem, type Problem } from '../../words/problem'
import { prepareOwnWorksheets } from '../../worksheet/ownWorksheets'
import type { Book } from '../shell/book'

/**
 * Why an edit of rows or worksheets cannot be: the worksheets as they would stand after it are built, and what is wrong
 * with the named quantity or worksheet is told. Units that do not agree are no reason: its number is then not shown.
 */
export async function tried(book: Book, edit: Edit, name: string): Promise<Problem | null> {
  await prepareOwnWorksheets()
  const { catalogWith } = await import('../../worksheet/catalogFor')
  const applied = apply(book.notebook(), edit)
  if (isProblem(applied)) return applied
  const { worksheets, rows } = applied.notebook
  const { catalog, refused } = catalogWith(worksheets, rows)
  const before = new Set(book.refusedWorksheets().map(({ code, path }) => `${code} ${path.join('/')}`))
  const fresh = refused.find(({ code, path }) => !before.has(`${code} ${path.join('/')}`))
  if (fresh) return { ...fresh, path: [] }
  const why = catalog.quantities.get(name)?.refused
  return why && !why.code.startsWith('units_') ? { ...why, path: [] } : null
}
