import type { Value } from '../functions/define'
import { type Problem, problem } from '../words/problem'
import type { Outline, OutlineQuantity } from '../worksheet/catalog'
import { asRead } from './asRead'
import type { CarriedWater } from './carriedWater'
import { scenarioAfter } from './commands'
import type { Edit } from './edit'
import type { Cell, Notebook, Scenario } from './notebook'
import { baselineOf } from './order'
import { alone, following } from './planLink'
import { resolve } from './resolve'
import { valueCell } from './valueCell'

/** What stands in a cell of the source scenario; undefined where it has no value. */
type ValueAt = (quantity: string) => Value | undefined

/** What becomes of a reading in the new scenario. */
export interface CarriedReading {
  readonly quantity: string
  /** the quantity of the source that stands in it; null where nothing foretells it: it counts as not taken */
  readonly from: string | null
}

/** Readings that a dose brings into a water that did not have them, or that were read as something else. */
const MAY_BEGIN: ReadonlySet<string> = new Set(['salt', 'borate'])

/** The readings of the new scenario. Those that the source has neither read nor foretold are not spoken of. */
export function carriedReadings(
  catalog: Pick<Outline, 'quantities'>,
  { foretold, stays }: CarriedWater,
  valueAt: ValueAt,
): readonly CarriedReading[] {
  return inputsOf(catalog, true).flatMap(({ name }): readonly CarriedReading[] => {
    const from = foretold[name] ?? (stays.includes(name) ? name : null)
    const value = from === null ? undefined : valueAt(from)
    const read = valueAt(name) !== undefined
    const begins = MAY_BEGIN.has(name) && typeof value === 'number' && value > 0
    if (from !== null && value !== undefined && (read || begins)) return [{ quantity: name, from }]
    return read ? [{ quantity: name, from: null }] : []
  })
}

export interface Carrying {
  readonly name: string
  readonly note: string
  readonly water: CarriedWater
  /** its cells follow the source's; else they are numbers, with all their digits */
  readonly live: boolean
  readonly valueAt: ValueAt
}

/**
 * A scenario of the water that a worksheet of another foretells, right of it, one step of history. What the source has of
 * its own beside the readings (pool, targets, products) goes with it; the rest follows the baseline, but for readings of its water.
 */
export function carryForward(
  notebook: Notebook,
  catalog: Outline,
  source: string,
  { name, note, water, live, valueAt }: Carrying,
): Edit | Problem {
  if (notebook.scenarios[source] === undefined) return problem('scenario_gone')
  const carried = carriedReadings(catalog, water, valueAt)
  if (!carried.some(({ from, quantity }) => from !== null && from !== quantity)) return problem('carry_nothing')
  const cells: Record<string, Cell> = { ...beside(notebook, catalog, source, live, valueAt) }
  for (const { name: quantity } of inputsOf(catalog, true)) {
    const from = carried.find((one) => one.quantity === quantity)?.from ?? null
    const value = from === null ? undefined : valueAt(from)
    if (from !== null && value !== undefined) {
      cells[quantity] = live ? linkTo(source, from) : asRead(notebook, catalog, source, quantity, value)
    }
  }
  return { type: 'add_scenario', scenario: foretold(scenarioAfter(notebook, name, source), note), cells }
}

/**
 * A scenario of the water that the step plan of another ends with. What is not among its readings is not taken. What the
 * source has of its own beside the readings goes with it. Live, each of the readings follows the plan (`followPlan`), those
 * too that the source does not have yet.
 * @param readings what the plan's end holds of the water; null for one that is not known
 */
export function afterPlan(
  notebook: Notebook,
  catalog: Outline,
  source: string,
  {
    name,
    note,
    live,
    readings,
    valueAt,
  }: Pick<Carrying, 'name' | 'note' | 'live' | 'valueAt'> & {
    readonly readings: ReadonlyMap<string, Value | null>
  },
): Edit {
  const cells: Record<string, Cell> = { ...beside(notebook, catalog, source, live, valueAt) }
  for (const { name: quantity } of inputsOf(catalog, true)) {
    const value = readings.get(quantity)
    if (value === undefined || (value === null && !live)) continue
    const cell: Cell = value === null ? { kind: 'not_taken' } : asRead(notebook, catalog, source, quantity, value)
    cells[quantity] = live ? following(cell, source) : cell
  }
  return { type: 'add_scenario', scenario: foretold(scenarioAfter(notebook, name, source), note), cells }
}

/** A scenario of this water, as of one that nobody has tested. */
function foretold(scenario: Scenario, note: string): Scenario {
  return { ...scenario, note, foretold: true }
}

/** Whether a scenario without anything of its own would have the baseline's reading here: that of an older water. */
function followsReading(notebook: Notebook, catalog: Outline, quantity: string): boolean {
  const { cell, from } = resolve(notebook, catalog, baselineOf(notebook).id, quantity)
  return cell !== null && from !== 'default' && cell.kind !== 'not_taken'
}

/**
 * What the source has of its own beside the readings: entries, readings of its sample, what it does not take from the baseline.
 * Linked, it is the same pool whatever is entered there later.
 */
function beside(
  notebook: Notebook,
  catalog: Outline,
  source: string,
  live: boolean,
  valueAt: ValueAt,
): Readonly<Record<string, Cell>> {
  const cells: Record<string, Cell> = {}
  if (source === baselineOf(notebook).id) return cells
  const inputs = inputsOf(catalog, false)
  if (live) for (const { name, worksheet } of inputs) if (worksheet === 'pool') cells[name] = linkTo(source, name)
  // Of what is worked out only the pool is the same pool afterwards: a volume that was assumed.
  const pool = [...catalog.quantities.values()].filter(({ formula, worksheet }) => formula && worksheet === 'pool')
  for (const { name } of [...inputs, ...pool]) {
    if (cells[name] !== undefined) continue
    const { from, cell } = resolve(notebook, catalog, source, name)
    const computed = catalog.quantities.get(name)?.formula !== null
    if (from === 'typed' || from === 'sample') {
      const own = cellFor(name, cell)
      if (own !== null) cells[name] = own
      else if (!computed) cells[name] = { kind: 'not_taken' }
    } else if (from === 'none' && !computed && followsReading(notebook, catalog, name))
      cells[name] = { kind: 'not_taken' }
  }
  return cells

  /** Null for a formula without an answer, which is no number. */
  function cellFor(quantity: string, cell: Cell): Cell | null {
    if (cell.kind === 'not_taken') return alone(cell)
    if (live) return linkTo(source, quantity)
    if (cell.kind !== 'formula') return alone(cell)
    const value = valueAt(quantity)
    return value === undefined ? null : valueCell(catalog, quantity, value)
  }
}

function linkTo(scenario: string, quantity: string): Cell {
  return { kind: 'formula', text: `'${scenario}'.${quantity}` }
}

/** The rows that are entered: readings of the water, or everything else. */
function inputsOf(catalog: Pick<Outline, 'quantities'>, readings: boolean): readonly OutlineQuantity[] {
  return [...catalog.quantities.values()].filter(
    ({ formula, worksheet }) => formula === null && (worksheet === 'sample') === readings,
  )
}
