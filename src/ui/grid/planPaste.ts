import { checkCell, type FormulaCheck } from '../../notebook/checkCell'
import type { Edit, SetCell } from '../../notebook/edit'
import { type Cell, cellKey, type Notebook } from '../../notebook/notebook'
import { own } from '../../notebook/own'
import { alone, planFault } from '../../notebook/planLink'
import { sameCell } from '../../notebook/sameCell'
import { together } from '../../notebook/together'
import { convert } from '../../units/convert'
import { isProblem, type Problem, problem } from '../../words/problem'
import type { Outline, OutlineQuantity } from '../../worksheet/catalog'
import { labelOf } from '../labelOf'
import { readEntry } from '../shell/readEntry'
import type { Copied } from './copyBlock'
import type { PasteReport, Refused } from './pasteReport'
import { readChoice } from './readChoice'

/** What is pasted into one cell: text from elsewhere, or a cell of this notebook. */
export type Field = string | Copied

/** Where it is pasted: rows and scenarios from the first cell on, to the last that there are. */
export interface Target {
  readonly notebook: Notebook
  readonly catalog: Outline
  readonly rows: readonly OutlineQuantity[]
  readonly scenarios: readonly string[]
  /** the unit that a row is shown in, and a bare number is read in */
  readonly unit: (quantity: string) => string
  readonly check: FormulaCheck
}

/** A field and where it is to go; undefined where there is no such row or scenario. */
export interface Placed {
  readonly field: Field
  readonly quantity: OutlineQuantity | undefined
  readonly scenario: string | undefined
  /** in which a bare number is read, where that is not the unit that the row is shown in; or why it cannot be told */
  readonly unit?: string | Problem
}

/** The fields from the first cell on, side by side and one under the other. */
export function planPaste(
  fields: readonly (readonly Field[])[],
  target: Target,
): { readonly edit: Edit | null; readonly report: PasteReport } {
  const places = fields.flatMap((line, down) =>
    line.map((field, across) => ({ field, quantity: target.rows[down], scenario: target.scenarios[across] })),
  )
  return planPlaced(places, target)
}

/**
 * The fields as one edit, and what became of each. What cannot be taken keeps nothing else from being taken, and is
 * reported with its reason; worked-out rows are left as they are.
 */
export function planPlaced(
  places: readonly Placed[],
  target: Omit<Target, 'rows' | 'scenarios'>,
): { readonly edit: Edit | null; readonly report: PasteReport } {
  const edits = new Map<string, SetCell>()
  const refused: Refused[] = []
  let [taken, locked, beyond] = [0, 0, 0]
  for (const { field, quantity, scenario, unit } of places) {
    if (!quantity || scenario === undefined) {
      beyond++
      continue
    }
    const cell = isProblem(unit)
      ? unit
      : readField(field, quantity, scenario, unit ?? target.unit(quantity.name), target)
    if (cell === 'locked') {
      locked++
      continue
    }
    const key = cellKey(scenario, quantity.name)
    const before = edits.get(key)
    const fault = isProblem(cell)
      ? cell
      : before && !sameCell(before.cell, cell)
        ? problem('pasted_twice')
        : cell && checkCell(target.notebook, target.catalog, quantity.name, cell, target.check)
    if (fault) {
      const label = labelOf(quantity.name, quantity.row)
      // Many a problem of an entry names its quantity itself.
      const why = { ...fault, path: 'label' in fault.facts ? [] : [label] }
      refused.push({ quantity: label, scenario: own(target.notebook.scenarios, scenario)?.name ?? '', why })
      continue
    }
    taken++
    if (!isProblem(cell)) edits.set(key, { type: 'set_cell', scenario, quantity: quantity.name, cell })
  }
  const changing = [...edits].filter(([key, { cell }]) => !sameCell(own(target.notebook.cells, key), cell))
  const edit = changing.length === 0 ? null : together(...changing.map(([, one]) => one))
  return { edit, report: { taken, locked, beyond, refused } }
}

/** What the cell is to hold; null: nothing, so that the next source stands there. */
function readField(
  field: Field,
  quantity: OutlineQuantity,
  scenario: string,
  unit: string,
  target: Pick<Target, 'notebook' | 'catalog'>,
): Cell | null | 'locked' | Problem {
  if (typeof field !== 'string') {
    const cell = ownCell(field, quantity, target.catalog)
    // where the plan that it followed is no more, or is the scenario's own, it is what it was
    return cell !== 'locked' && !isProblem(cell) && planFault(target.notebook, scenario, cell) ? alone(cell) : cell
  }
  if (quantity.formula) return 'locked'
  const { row, name } = quantity
  if ('input' in row && row.input === 'choice' && !field.trimStart().startsWith('='))
    return readChoice(field, name, row.choices)
  const edit = readEntry(field, { scenario, quantity, unit, notebook: target.notebook })
  if (isProblem(edit)) return edit
  return edit.type === 'set_cell' ? edit.cell : null
}

/** A cell of this notebook in the place of another: a value keeps what it means, in whatever unit the other counts. */
function ownCell(
  { quantity: from, cell, typed }: Copied,
  to: OutlineQuantity,
  catalog: Outline,
): Cell | null | 'locked' | Problem {
  if (to.formula && !(typed && from === to.name)) return 'locked'
  const unit = catalog.quantities.get(from)?.row.unit
  if (from === to.name || cell === null) return cell
  // a reading of another kind follows no plan
  if (unit === undefined || (cell.kind !== 'value' && cell.kind !== 'limit')) return alone(cell)
  const canonical = convert(cell.canonical, unit, to.row.unit)
  return isProblem(canonical) ? canonical : { ...alone(cell), canonical }
}
