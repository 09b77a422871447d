import type { Value } from '../functions/define'
import { isProblem } from '../words/problem'
import type { Outline } from '../worksheet/catalog'
import { parseFormula } from '../worksheet/parse'
import type { CellPlace } from './cellPlace'
import { checkFormula } from './checkFormula'
import type { Edit, SimpleEdit } from './edit'
import { namesIn } from './formulaNames'
import type { Cell, Notebook } from './notebook'
import { alone, planOf } from './planLink'
import { together } from './together'
import { literal, valueCell } from './valueCell'

/** The value that stands in a cell; undefined where there is none. */
export type ValueAt = (place: CellPlace) => Value | undefined

/**
 * Takes a scenario out, and turns every link to it into the number that it had, in one step of history: a cell that is
 * nothing but a link becomes the value, in a longer formula the name becomes the number and the rest stays a formula. No
 * digit is dropped, so what rests on it stays as it was. Where the units of a formula need that of the link, or the link
 * had no value, the whole formula becomes its value; where that has none either, an input is not taken, and a worked-out
 * row follows its own formula again. What followed its plan keeps what that plan ended with. A row of the reader's own keeps the unit that it is said to have.
 */
export function removeLinkedScenario(notebook: Notebook, catalog: Outline, scenario: string, valueAt: ValueAt): Edit {
  const edits: SimpleEdit[] = []
  for (const [key, cell] of Object.entries(notebook.cells)) {
    const [in_ = '', quantity = ''] = key.split('/')
    if (in_ === scenario) continue
    const place = { scenario: in_, quantity }
    if (planOf(cell) === scenario) edits.push({ type: 'set_cell', ...place, cell: alone(cell) })
    if (cell.kind !== 'formula') continue
    const anew = unlinked(notebook, catalog, cell.text, place, scenario, valueAt)
    if (anew !== undefined) edits.push({ type: 'set_cell', ...place, cell: anew })
  }
  for (const own of Object.values(notebook.rows)) {
    const formula = withNumbers(own.row.formula, scenario, valueAt)
    if (formula === null || formula === own.row.formula) continue
    const needsUnit = checkFormula(notebook, catalog, formula, own.row.unit) !== null
    const row = { ...own.row, formula, ...(needsUnit && { units_as_said: true as const }) }
    edits.push({ type: 'put_row', row: { ...own, row } })
  }
  return together(...edits, { type: 'remove_scenario', scenario })
}

/** What a cell holds without its links to a scenario; undefined where it has none. */
function unlinked(
  notebook: Notebook,
  catalog: Outline,
  text: string,
  place: CellPlace,
  scenario: string,
  valueAt: ValueAt,
): Cell | null | undefined {
  const formula = withNumbers(text, scenario, valueAt)
  if (formula === text) return undefined
  const quantity = catalog.quantities.get(place.quantity)
  const stays = formula !== null && !isAlone(text) && !checkFormula(notebook, catalog, formula, quantity?.row.unit)
  if (stays) return { kind: 'formula', text: formula }
  const value = valueAt(place)
  if (value !== undefined) return valueCell(catalog, place.quantity, value)
  return quantity?.formula === null ? { kind: 'not_taken' } : null
}

/** The formula with every name of that scenario as its value; null where one of them has none. */
function withNumbers(text: string, scenario: string, valueAt: ValueAt): string | null {
  const formula = parseFormula(text)
  if (isProblem(formula)) return text
  let written = ''
  let done = 0
  for (const { of, quoted, name, from, to } of namesIn(formula.tree)) {
    if (!quoted || of !== scenario) continue
    const value = valueAt({ scenario, quantity: name })
    if (value === undefined) return null
    written += text.slice(done, from) + literal(value)
    done = to
  }
  return written + text.slice(done)
}

/** Whether a formula is one name and nothing else. */
function isAlone(text: string): boolean {
  const formula = parseFormula(text)
  return !isProblem(formula) && formula.tree.kind === 'name'
}
