import type { Outline, OutlineQuantity } from './catalog'
import { SHIPPED } from './shipped'
import graph from './shippedGraph.build'
import { withTargets } from './withTargets'

let made: Outline | null = null

/** The shipped worksheets for the page: `shippedCatalog` without its parsed formulas; made once. */
export function shippedOutline(): Outline {
  made ??= {
    worksheets: SHIPPED.map(({ definition }) => definition),
    quantities: quantities(),
    solves: new Map(graph.solves.map((solve) => [solve.id, solve])),
  }
  return made
}

function quantities(): ReadonlyMap<string, OutlineQuantity> {
  const sets = SHIPPED.flatMap(({ definition }) => definition.targets ?? [])
  const of = new Map(graph.quantities.map((quantity, index) => [quantity.name, { ...quantity, index }]))
  const rows = SHIPPED.flatMap(({ definition }) => definition.groups).flatMap((group) => group.rows)
  return new Map(
    rows.flatMap((row): [string, OutlineQuantity][] => {
      const known = typeof row === 'string' ? undefined : of.get(row.name)
      if (typeof row === 'string' || !known) return []
      const formula = 'formula' in row ? { text: row.formula } : null
      return [[row.name, { ...known, row: withTargets(row, sets), formula }]]
    }),
  )
}
