import type { Catalog, Quantity } from '../worksheet/catalog'
import type { Expression } from '../worksheet/formula'
import { readsOf } from '../worksheet/readsOf'
import { visit } from '../worksheet/visit'

/** The sheets of the engine: quantities, the hidden blocks of solves, the checks that raise notices. */
export const QUANTITIES = 0
export const SOLVES = 1
export const CHECKS = 2
export const SHEET_NAMES = ['q', 's', 'c'] as const

export interface CheckRow {
  readonly quantity: string
  readonly notice: string
  readonly tree: Expression
}

/** Which row of which sheet holds what; the same in every column. */
export interface Layout {
  readonly catalog: Catalog
  /** quantities by row: inputs first, so that a column can be refilled in one piece */
  readonly quantities: readonly Quantity[]
  readonly inputs: number
  readonly rowOf: ReadonlyMap<string, number>
  /** `water.lsi` → its row on the solves' sheet; `water` → the first row of its block */
  readonly solveRow: ReadonlyMap<string, number>
  /** solves by first row */
  readonly solves: readonly string[]
  readonly checks: readonly CheckRow[]
  /** the solves that a quantity reads, and the checks that it owns, by row */
  readonly solvesReadBy: ReadonlyMap<string, readonly string[]>
  readonly checksOf: ReadonlyMap<string, readonly number[]>
}

/**
 * The layout for the wanted quantities and all that they and their checks read; for all of them when none are named. A check
 * of a quantity that is only read comes along where all that it reads is there anyway.
 */
export function layoutFor(catalog: Catalog, wanted?: Iterable<string>): Layout {
  const all = [...catalog.quantities.values()]
  const needed = wanted ? closure(catalog, withCheckReads(catalog, [...wanted])) : null
  const kept = needed ? all.filter((q) => needed.has(q.name)) : all
  const inputs = kept.filter((q) => q.formula === null)
  const quantities = [...inputs, ...kept.filter((q) => q.formula !== null)]
  const rowOf = new Map(quantities.map((q, row) => [q.name, row]))

  const solvesReadBy = new Map<string, readonly string[]>()
  const checks: CheckRow[] = []
  const checksOf = new Map<string, number[]>()
  for (const q of quantities) {
    const trees = [...(q.formula ? [q.formula.tree] : []), ...q.refusals.map(({ when }) => when.tree)]
    if (q.formula) solvesReadBy.set(q.name, [...new Set(trees.flatMap((tree) => solvesIn(catalog, tree)))])
    for (const { notice, when } of q.checks) {
      if (!namesIn(when.tree).every((name) => rowOf.has(name))) continue
      checksOf.set(q.name, [...(checksOf.get(q.name) ?? []), checks.length])
      checks.push({ quantity: q.name, notice, tree: when.tree })
    }
  }
  const read = new Set([...solvesReadBy.values()].flat())
  const solveRow = new Map<string, number>()
  const solves: string[] = []
  let row = 0
  for (const block of catalog.solves.values()) {
    if (!read.has(block.id)) continue
    solves.push(block.id)
    solveRow.set(block.id, row)
    for (const output of block.outputs) solveRow.set(`${block.id}.${output}`, row++)
  }
  return { catalog, quantities, inputs: inputs.length, rowOf, solveRow, solves, checks, solvesReadBy, checksOf }
}

/** The named quantities and all that they read, directly or through others. */
export function closure(catalog: Catalog, wanted: Iterable<string>): Set<string> {
  const found = new Set<string>()
  const open = [...wanted]
  for (let name = open.pop(); name !== undefined; name = open.pop()) {
    if (found.has(name)) continue
    found.add(name)
    open.push(...(catalog.quantities.get(name)?.reads ?? []))
  }
  return found
}

function withCheckReads(catalog: Catalog, wanted: readonly string[]): readonly string[] {
  const checks = wanted.flatMap((name) => catalog.quantities.get(name)?.checks ?? [])
  return [...wanted, ...checks.flatMap(({ when }) => readsOf(when.tree, catalog.solves))]
}

function solvesIn(catalog: Catalog, tree: Expression): string[] {
  const found = new Set<string>()
  visit(tree, (node) => {
    if (node.kind === 'name' && node.of !== null && !node.quoted && catalog.solves.has(node.of)) found.add(node.of)
  })
  return [...found]
}

function namesIn(tree: Expression): string[] {
  const names: string[] = []
  visit(tree, (node) => {
    if (node.kind === 'name' && node.of === null) names.push(node.name)
  })
  return names
}
