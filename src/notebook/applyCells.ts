import { type Problem, problem } from '../words/problem'
import type { SetCell, SimpleEdit } from './edit'
import { LIMITS } from './limits'
import { type Cell, cellKey, type Notebook } from './notebook'
import { own } from './own'
import { planFault } from './planLink'

/** Entries that were made, and the edits that take them back, in the order in which the entries were made. */
export interface CellsApplied {
  readonly notebook: Notebook
  readonly inverses: readonly SimpleEdit[]
  readonly history: 'step' | 'none'
}

/** Makes entries one after another. The record of cells is copied once, not once an entry: a paste can be thousands. */
export function setCells(notebook: Notebook, edits: readonly SetCell[]): CellsApplied | Problem {
  const cells: Record<string, Cell> = { ...notebook.cells }
  let count = Object.keys(cells).length
  let isChanged = false
  const inverses: SimpleEdit[] = []
  for (const edit of edits) {
    if (own(notebook.scenarios, edit.scenario) === undefined) return problem('scenario_gone')
    const fault = planFault(notebook, edit.scenario, edit.cell)
    if (fault !== null) return fault
    const key = cellKey(edit.scenario, edit.quantity)
    const before = own(cells, key) ?? null
    inverses.push({ ...edit, cell: before })
    if (before === null && edit.cell === null) continue
    isChanged = true
    if (edit.cell === null) {
      delete cells[key]
      count--
    } else {
      if (before === null && count >= LIMITS.cells) return problem('too_many_cells', [], { most: LIMITS.cells })
      if (before === null) count++
      cells[key] = edit.cell
    }
  }
  return { notebook: isChanged ? { ...notebook, cells } : notebook, inverses, history: isChanged ? 'step' : 'none' }
}
