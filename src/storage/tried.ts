import { apply } from '../notebook/apply'
import type { Edit } from '../notebook/edit'
import { editSchema } from '../notebook/editSchema'
import type { Notebook } from '../notebook/notebook'
import { checked } from '../notebook/schemaProblems'
import { isProblem, type Problem, problem } from '../words/problem'

/** The notebook after the edits, and the edits as plain data; a problem when one is not an edit or does not apply. */
export function tried(
  start: Notebook,
  edits: readonly Edit[],
): { readonly notebook: Notebook; readonly edits: readonly Edit[] } | Problem {
  let notebook = start
  const plain: Edit[] = []
  for (const edit of edits) {
    const read = checked(editSchema, edit, [start.name])
    if (Array.isArray(read)) return read[0] ?? problem('file_unreadable', [start.name], { found: edit.type })
    const applied = apply(notebook, read.value)
    if (isProblem(applied)) return applied
    notebook = applied.notebook
    plain.push(read.value)
  }
  return { notebook, edits: plain }
}
