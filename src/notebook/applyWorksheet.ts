import { type Problem, problem } from '../words/problem'
import type { SimplyApplied } from './applied'
import type { PutWorksheet, SimpleEdit } from './edit'
import { LIMITS } from './limits'
import type { Notebook } from './notebook'
import { own, withEntry, withoutEntry } from './own'

/** The order of the record is the order of the worksheets, so an inverse has to say where one stood. */
export function putWorksheet(notebook: Notebook, edit: PutWorksheet): SimplyApplied | Problem {
  const { id, definition } = edit
  if (definitionId(definition) !== id) return problem('worksheet_id', [], { id })
  if (Object.hasOwn(notebook.worksheets, id)) {
    const inverse: SimpleEdit = { type: 'put_worksheet', id, definition: own(notebook.worksheets, id) }
    return {
      notebook: { ...notebook, worksheets: withEntry(notebook.worksheets, id, definition) },
      inverse,
      history: 'step',
    }
  }
  if (edit.before !== undefined && !Object.hasOwn(notebook.worksheets, edit.before))
    return problem('worksheet_gone', [], { id: edit.before })
  if (Object.keys(notebook.worksheets).length >= LIMITS.worksheets)
    return problem('too_many_worksheets', [], { most: LIMITS.worksheets })
  const worksheets: Record<string, unknown> = {}
  for (const [other, theirs] of Object.entries(notebook.worksheets)) {
    if (other === edit.before) worksheets[id] = definition
    worksheets[other] = theirs
  }
  if (edit.before === undefined) worksheets[id] = definition
  return { notebook: { ...notebook, worksheets }, inverse: { type: 'remove_worksheet', id }, history: 'step' }
}

export function removeWorksheet(notebook: Notebook, id: string): SimplyApplied | Problem {
  if (!Object.hasOwn(notebook.worksheets, id)) return problem('worksheet_gone', [], { id })
  const ids = Object.keys(notebook.worksheets)
  const next = ids[ids.indexOf(id) + 1]
  const definition = own(notebook.worksheets, id)
  return {
    notebook: { ...notebook, worksheets: withoutEntry(notebook.worksheets, id) },
    inverse: { type: 'put_worksheet', id, definition, ...(next === undefined ? {} : { before: next }) },
    history: 'step',
  }
}

function definitionId(definition: unknown): unknown {
  return typeof definition === 'object' && definition !== null && 'id' in definition ? definition.id : undefined
}
