import type { Outline, OutlineQuantity } from '../worksheet/catalog'
import type { Row } from '../worksheet/definition'
import { isForetold } from './foretold'
import { type Cell, cellKey, type Notebook, type Scenario } from './notebook'
import { baselineOf } from './order'
import { own } from './own'

/** Where what stands in a cell comes from. */
export type Source =
  /** entered in this scenario; in a worked-out row that is an assumption */
  | { readonly from: 'typed'; readonly cell: Cell }
  /** a reading of the sample that this scenario is tied to */
  | { readonly from: 'sample'; readonly cell: Cell }
  /** what the baseline has, wherever the baseline has it from */
  | { readonly from: 'baseline'; readonly cell: Cell }
  /** the worksheet's own declared default */
  | { readonly from: 'default'; readonly cell: Cell }
  /** the sample, or what was foretold, has no such reading, and another water's is not taken in its place */
  | { readonly from: 'lacking'; readonly cell: null }
  /** nothing: an input was not taken, a worked-out row follows its formula */
  | { readonly from: 'none'; readonly cell: null }

const NONE: Source = { from: 'none', cell: null }
const LACKING: Source = { from: 'lacking', cell: null }

/**
 * Where a cell's value comes from, in the contract's order: what was typed in this scenario; its own sample's reading;
 * tied to a sample, or foretold, a quantity of `sample` is never inherited; else what the baseline has. A sample of another place
 * inherits nothing of `pool`. A declared default stands only where the search ends with nothing.
 *
 * A worked-out row has no reading and no default; an assumption typed over it is followed like an entry.
 */
export function resolve(
  notebook: Notebook,
  catalog: Pick<Outline, 'quantities'>,
  scenarioId: string,
  quantityName: string,
): Source {
  const scenario = own(notebook.scenarios, scenarioId)
  const quantity = catalog.quantities.get(quantityName)
  if (scenario === undefined || quantity === undefined) return NONE
  const here = ownSource(notebook, scenario, quantity)
  if (here !== null) return here
  const standIn = declared(quantity.row)
  const baseline = baselineOf(notebook)
  if (scenario.id === baseline.id || !inherits(notebook, scenario, quantity)) {
    if (standIn !== null) return { from: 'default', cell: standIn }
    return isInput(quantity.row) && hasOwnWater(scenario) && quantity.worksheet === 'sample' ? LACKING : NONE
  }
  const followed = ownSource(notebook, baseline, quantity)?.cell ?? standIn
  return followed === null ? NONE : { from: 'baseline', cell: followed }
}

/** What the scenario has of itself. */
function ownSource(notebook: Notebook, scenario: Scenario, quantity: OutlineQuantity): Source | null {
  const typed = own(notebook.cells, cellKey(scenario.id, quantity.name))
  if (typed !== undefined) return { from: 'typed', cell: typed }
  if (scenario.sample === null || !isInput(quantity.row)) return null
  const sample = own(notebook.samples, scenario.sample)
  const reading = sample === undefined ? undefined : own(sample.readings, quantity.name)
  return reading === undefined ? null : { from: 'sample', cell: reading }
}

/** Whether the quantity follows the baseline where the scenario has nothing of its own. */
function inherits(notebook: Notebook, scenario: Scenario, quantity: OutlineQuantity): boolean {
  if (quantity.worksheet === 'sample') return !hasOwnWater(scenario)
  const elsewhere = own(notebook.samples, scenario.sample ?? '')?.elsewhere ?? false
  return !(elsewhere && quantity.worksheet === 'pool')
}

/** Another's readings are of another water. */
function hasOwnWater(scenario: Scenario): boolean {
  return scenario.sample !== null || isForetold(scenario)
}

function declared(row: Row): Cell | null {
  if (!('input' in row) || row.default === undefined) return null
  if (row.input === 'choice') return { kind: 'choice', id: row.default }
  return { kind: 'value', entered: String(row.default), unit: row.unit, canonical: row.default }
}

function isInput(row: Row): boolean {
  return 'input' in row
}
