import { isProblem } from '../words/problem'
import type { Outline, OutlineQuantity } from '../worksheet/catalog'
import type { Expression } from '../worksheet/formula'
import { isScenario } from '../worksheet/nameKey'
import { parseFormula } from '../worksheet/parse'
import { readsOf } from '../worksheet/readsOf'
import type { CellPlace } from './cellPlace'
import { namesIn } from './formulaNames'
import { cellKey, type Notebook } from './notebook'
import { baselineOf, inOrder } from './order'
import { own } from './own'
import { planOf, readsOthers } from './planLink'
import { resolve } from './resolve'
import { BASELINE } from './scenarioName'

/**
 * The cells that a cell reads directly, in whichever scenario, in the order in which its formula comes upon them; one that
 * follows the baseline reads the baseline's, and one that follows a plan what that plan is made from. Values read nothing.
 *
 * This is the order of evaluation: a cell is worked out after all that it reads, so a scenario that is carried forward
 * from another comes after it, wherever the two stand.
 */
export function readsOfCell(
  notebook: Notebook,
  catalog: Outline,
  { scenario, quantity }: CellPlace,
): readonly CellPlace[] {
  const source = resolve(notebook, catalog, scenario, quantity)
  if (source.from === 'baseline') return [{ scenario: baselineOf(notebook).id, quantity }]
  if (source.cell !== null) {
    const plan = planOf(source.cell)
    if (plan !== null) return planReads(notebook, catalog, plan)
    return source.cell.kind === 'formula' ? formulaReads(notebook, catalog, scenario, source.cell.text) : []
  }
  const row = catalog.quantities.get(quantity)
  return row === undefined || row.formula === null ? [] : rowReads(notebook, catalog, scenario, row)
}

/** The cells that read a cell directly: formulas that use its quantity, and scenarios that follow it as the baseline. */
export function readersOfCell(notebook: Notebook, catalog: Outline, place: CellPlace): readonly CellPlace[] {
  const byRow = (catalog.quantities.get(place.quantity)?.readBy ?? []).flatMap((quantity) => {
    const elsewhere = namesScenarios(catalog.quantities.get(quantity)?.formula?.text ?? '')
    const scenarios = elsewhere ? inOrder(notebook).map(({ id }) => id) : [place.scenario]
    return scenarios.map((scenario) => ({ scenario, quantity }))
  })
  const entered = Object.entries(notebook.cells)
    // a reading that the plan does not foretell uses nothing of it
    .filter(([, cell]) => readsOthers(cell) && cell.kind !== 'not_taken')
    .flatMap(([key]) => {
      const [scenario = '', quantity = ''] = key.split('/')
      return [{ scenario, quantity }]
    })
  const followers =
    place.scenario === baselineOf(notebook).id
      ? inOrder(notebook).map(({ id }) => ({ scenario: id, quantity: place.quantity }))
      : []
  const candidates = new Map([...followers, ...byRow, ...entered].map((one) => [keyOf(one), one]))
  return [...candidates.values()].filter(
    (one) =>
      keyOf(one) !== keyOf(place) && readsOfCell(notebook, catalog, one).some((read) => keyOf(read) === keyOf(place)),
  )
}

/**
 * A circle that runs through one of these cells, each of its cells once in the order of reading; null when there is none.
 * Circles that do not touch them are not looked for.
 */
export function circleThrough(
  notebook: Notebook,
  catalog: Outline,
  starts: readonly CellPlace[],
): readonly CellPlace[] | null {
  for (const start of starts) {
    const circle = pathBack(notebook, catalog, start)
    if (circle !== null) return circle
  }
  return null
}

/** Depth first with a list of its own: a chain of formulas can be longer than the stack. */
function pathBack(notebook: Notebook, catalog: Outline, start: CellPlace): readonly CellPlace[] | null {
  const goal = keyOf(start)
  const cameFrom = new Map<string, CellPlace | null>([[goal, null]])
  const open: CellPlace[] = [start]
  for (let at = open.pop(); at !== undefined; at = open.pop()) {
    for (const read of readsOfCell(notebook, catalog, at)) {
      const key = keyOf(read)
      if (key === goal) {
        const path: CellPlace[] = []
        for (let back: CellPlace | null = at; back !== null; back = cameFrom.get(keyOf(back)) ?? null) path.push(back)
        return path.reverse()
      }
      if (cameFrom.has(key)) continue
      cameFrom.set(key, at)
      open.push(read)
    }
  }
  return null
}

export function keyOf({ scenario, quantity }: CellPlace): string {
  return cellKey(scenario, quantity)
}

function formulaReads(notebook: Notebook, catalog: Outline, scenario: string, text: string): readonly CellPlace[] {
  const tree = treeOf(text)
  return tree === null ? [] : treeReads(notebook, catalog, scenario, tree)
}

/** A plan reads all that is entered in its scenario, and what is assumed there; the rest it works out from those. */
function planReads(notebook: Notebook, catalog: Outline, scenario: string): readonly CellPlace[] {
  if (own(notebook.scenarios, scenario) === undefined) return []
  return [...catalog.quantities.keys()]
    .filter((quantity) => {
      const { cell } = resolve(notebook, catalog, scenario, quantity)
      return cell !== null && (cell.kind !== 'not_taken' || planOf(cell) !== null)
    })
    .map((quantity) => ({ scenario, quantity }))
}

/** A shipped row reads its own scenario alone, and the catalog knows what; a reader's own may name others. */
function rowReads(notebook: Notebook, catalog: Outline, scenario: string, row: OutlineQuantity): readonly CellPlace[] {
  const text = row.formula?.text ?? ''
  const here = row.reads.map((quantity) => ({ scenario, quantity }))
  if (!namesScenarios(text)) return here
  const tree = treeOf(text)
  if (tree === null) return here
  const read = treeReads(notebook, catalog, scenario, tree)
  const named = new Set(namesIn(tree).map(({ name }) => name))
  return [
    ...read,
    ...here.filter(({ quantity }) => !named.has(quantity) && !read.some((one) => one.quantity === quantity)),
  ]
}

/** Whether a formula may name another scenario: most do not, and are not parsed for it. */
function namesScenarios(text: string): boolean {
  return text.includes("'") || text.includes(BASELINE)
}

function treeReads(notebook: Notebook, catalog: Outline, scenario: string, tree: Expression): readonly CellPlace[] {
  const places = new Map<string, CellPlace>()
  for (const node of namesIn(tree)) {
    const other = isScenario(node)
    const of = !other ? scenario : node.quoted ? (node.of ?? '') : baselineOf(notebook).id
    if (own(notebook.scenarios, of) === undefined) continue
    const quantities = other ? [node.name] : readsOf(node, catalog.solves)
    for (const quantity of quantities) {
      const place = { scenario: of, quantity }
      places.set(keyOf(place), place)
    }
  }
  return [...places.values()]
}

const trees = new Map<string, Expression | null>()
const MOST_TREES = 2_000

/** Formulas are few and asked for again and again. */
function treeOf(text: string): Expression | null {
  const known = trees.get(text)
  if (known !== undefined) return known
  const formula = parseFormula(text)
  const tree = isProblem(formula) ? null : formula.tree
  if (trees.size >= MOST_TREES) trees.clear()
  trees.set(text, tree)
  return tree
}
