import { generateKeyBetween } from 'fractional-indexing'
import { isProblem, type Problem, problem } from '../words/problem'
import type { Outline } from '../worksheet/catalog'
import { nameKey } from '../worksheet/nameKey'
import { type OwnFormulaRow, type OwnRow, ownRowsInOrder } from '../worksheet/ownRow'
import { parseFormula } from '../worksheet/parse'
import { renamedFormula } from '../worksheet/renamedFormula'
import { newId } from './create'
import type { Edit, SimpleEdit } from './edit'
import { namesIn } from './formulaNames'
import type { Notebook } from './notebook'
import { own } from './own'
import { together } from './together'

type Place = Pick<OwnRow, 'after' | 'order'>

/** A new row of one's own right under another row of the worksheet, be that shipped or own too. */
export function addRow(notebook: Notebook, worksheet: string, under: string, row: OwnFormulaRow): Edit {
  return { type: 'put_row', row: { id: newId(), worksheet, ...placeUnder(notebook, worksheet, under), row } }
}

/**
 * One row up (-1) or down (1) among the rows of its worksheet.
 * @param names the quantities of the worksheet as they stand, the row's own included
 */
export function moveRow(notebook: Notebook, id: string, names: readonly string[], by: -1 | 1): Edit | Problem {
  const row = own(notebook.rows, id)
  if (row === undefined) return problem('row_gone')
  const others = names.filter((name) => name !== row.row.name)
  const under = others[names.indexOf(row.row.name) - 1 + by]
  if (under === undefined) return problem('row_at_end', [], { name: row.row.name })
  return { type: 'put_row', row: { ...row, ...placeUnder(notebook, row.worksheet, under, id) } }
}

/** A row taken out, with what was typed over it; refused while a formula reads it. */
export function removeRow(notebook: Notebook, catalog: Outline, id: string): Edit | Problem {
  const row = own(notebook.rows, id)
  if (row === undefined) return problem('row_gone')
  const { name } = row.row
  const users = usersOf(notebook, catalog, name)
  if (users.length > 0) return problem('row_in_use', [], { name, users })
  return together(...forget(notebook, name), { type: 'remove_row', row: id })
}

/** A row with other content. Under another name, all formulas that read it follow, and what was typed over it. */
export function changeRow(notebook: Notebook, id: string, content: OwnFormulaRow): Edit | Problem {
  const row = own(notebook.rows, id)
  if (row === undefined) return problem('row_gone')
  const put: Edit = { type: 'put_row', row: { ...row, row: content } }
  const before = row.row.name
  if (before === content.name) return put
  const renamed = (text: string) => renamedFormula(text, (name) => (name === before ? content.name : undefined))
  const edits: SimpleEdit[] = [put]
  for (const other of Object.values(notebook.rows)) {
    const formula = renamed(other.row.formula)
    if (other.id !== id && formula !== other.row.formula)
      edits.push({ type: 'put_row', row: { ...other, row: { ...other.row, formula } } })
  }
  for (const [key, cell] of Object.entries(notebook.cells)) {
    const [scenario = '', quantity = ''] = key.split('/')
    const anew = cell.kind === 'formula' ? { ...cell, text: renamed(cell.text) } : cell
    if (quantity === before) {
      edits.push({ type: 'set_cell', scenario, quantity, cell: null })
      edits.push({ type: 'set_cell', scenario, quantity: content.name, cell: anew })
    } else if (cell.kind === 'formula' && anew.kind === 'formula' && anew.text !== cell.text) {
      edits.push({ type: 'set_cell', scenario, quantity, cell: anew })
    }
  }
  return together(...edits)
}

/** What formulas read a quantity: other rows, and formulas that were entered in cells; by the quantity they stand in. */
export function usersOf(notebook: Notebook, catalog: Outline, name: string): readonly string[] {
  const rows = catalog.quantities.get(name)?.readBy ?? []
  const cells = Object.entries(notebook.cells).flatMap(([key, cell]) => {
    const quantity = key.slice(key.indexOf('/') + 1)
    return cell.kind === 'formula' && quantity !== name && reads(cell.text, name) ? [quantity] : []
  })
  return [...new Set([...rows, ...cells])]
}

/** Takes out what was typed in a quantity and the unit that was chosen for it. */
export function forget(notebook: Notebook, name: string): readonly SimpleEdit[] {
  const cells = Object.keys(notebook.cells).flatMap((key): SimpleEdit[] => {
    const [scenario = '', quantity = ''] = key.split('/')
    return quantity === name ? [{ type: 'set_cell', scenario, quantity, cell: null }] : []
  })
  return own(notebook.units, name) === undefined ? cells : [...cells, { type: 'set_unit', quantity: name, unit: null }]
}

function reads(text: string, name: string): boolean {
  const formula = parseFormula(text)
  return !isProblem(formula) && namesIn(formula.tree).some((node) => nameKey(node) === name)
}

function placeUnder(notebook: Notebook, worksheet: string, under: string, self?: string): Place {
  const here = ownRowsInOrder(notebook.rows).filter((row) => row.worksheet === worksheet && row.id !== self)
  const above = here.find(({ row }) => row.name === under)
  const after = above?.after ?? under
  const siblings = here.filter((row) => row.after === after)
  const next = siblings[above ? siblings.indexOf(above) + 1 : 0]
  return { after, order: generateKeyBetween(above?.order ?? null, next?.order ?? null) }
}
