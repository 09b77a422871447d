import type { Edit } from '../../notebook/edit'
import type { Cell, Notebook } from '../../notebook/notebook'
import { parseEntry } from '../../units/parseEntry'
import { isProblem, type Problem, problem } from '../../words/problem'
import type { OutlineQuantity } from '../../worksheet/catalog'
import { labelOf } from '../labelOf'
import { formulas, ON_THEIR_WAY } from './formulas'

/**
 * What was typed in a cell, as the edit that it asks for. Nothing at all clears the cell, so that the next source
 * stands there; a dash says that the reading was not taken; `=` begins a formula. A reading of a sample may be a limit
 * of its test, `>100`, which is kept as one.
 */
export function readEntry(
  entered: string,
  {
    scenario,
    quantity,
    unit,
    notebook,
  }: { scenario: string; quantity: OutlineQuantity; unit: string; notebook: Notebook },
): Edit | Problem {
  const { name, row } = quantity
  const set = (cell: Cell | null): Edit => ({ type: 'set_cell', scenario, quantity: name, cell })
  if (entered.trimStart().startsWith('=')) {
    const text = formulas()?.toStored(entered.trim().slice(1).trim(), notebook) ?? ON_THEIR_WAY
    return isProblem(text) ? placed(text) : set({ kind: 'formula', text })
  }
  const { profile } = notebook
  const context = { profile, displayed: unit, quantity: name }
  const limit = quantity.worksheet === 'sample' ? LIMIT.exec(entered) : null
  if (limit) {
    const bound = parseEntry(entered.slice(limit[0].length), row.unit, context)
    if (bound === null || bound === 'not_taken') return placed(problem('limit_entered', [], { found: entered.trim() }))
    const side = /[<≤]/.test(limit[0]) ? 'below' : 'above'
    return isProblem(bound) ? placed(bound) : set({ kind: 'limit', side, ...bound })
  }
  const value = parseEntry(entered, row.unit, context)
  if (value === null) return set(null)
  if (value === 'not_taken') return set({ kind: 'not_taken' })
  return isProblem(value) ? placed(value) : set({ kind: 'value', ...value })

  function placed(trouble: Problem): Problem {
    return trouble.path.length > 0 ? trouble : { ...trouble, path: [labelOf(name, row)] }
  }
}

const LIMIT = /^\s*[<>≤≥]=?/
