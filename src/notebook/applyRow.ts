import { type Problem, problem } from '../words/problem'
import type { SimplyApplied } from './applied'
import type { PutRow, SimpleEdit } from './edit'
import { LIMITS } from './limits'
import type { Notebook } from './notebook'
import { isOrderKey } from './order'
import { own, withEntry, withoutEntry } from './own'

/** No two own rows have one name; whether a worksheet has a quantity of that name is asked of `checkEdit`. */
export function putRow(notebook: Notebook, { row }: PutRow): SimplyApplied | Problem {
  const before = own(notebook.rows, row.id)
  if (before === undefined && Object.keys(notebook.rows).length >= LIMITS.rows)
    return problem('too_many_rows', [], { most: LIMITS.rows })
  const { name } = row.row
  if (Object.values(notebook.rows).some((other) => other.id !== row.id && other.row.name === name))
    return problem('row_name_taken', [], { name })
  if (!isOrderKey(row.order)) return problem('order_unreadable', [], { name })
  const inverse: SimpleEdit =
    before === undefined ? { type: 'remove_row', row: row.id } : { type: 'put_row', row: before }
  return { notebook: { ...notebook, rows: withEntry(notebook.rows, row.id, row) }, inverse, history: 'step' }
}

export function removeRow(notebook: Notebook, id: string): SimplyApplied | Problem {
  const before = own(notebook.rows, id)
  if (before === undefined) return problem('row_gone')
  const rows = withoutEntry(notebook.rows, id)
  return { notebook: { ...notebook, rows }, inverse: { type: 'put_row', row: before }, history: 'step' }
}
