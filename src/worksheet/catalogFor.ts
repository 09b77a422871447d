import { LOCKED } from '../functions/registry'
import type { Problem } from '../words/problem'
import { buildCatalog, isCatalog } from './buildCatalog'
import type { Catalog, Quantity } from './catalog'
import { catalogUnits } from './catalogUnits'
import { type OwnRow, type OwnRows, ownRowsInOrder } from './ownRow'
import { isDefinition, readDefinition } from './readDefinition'
import { SHIPPED } from './shipped'
import { shippedCatalog } from './shippedCatalog'
import type { Source } from './source'
import { unitFlags } from './unitCheck'
import { rowSourceId, withOwnRows } from './withOwnRows'

export interface WithOwn {
  readonly catalog: Catalog
  /** why some of the reader's own worksheets and rows are not in it */
  readonly refused: readonly Problem[]
}

/**
 * The shipped worksheets and a notebook's own, by id, with the reader's own rows in them. A worksheet of its own that is
 * refused is left out with all its problems, so that a notebook made with other worksheets still opens; those that need
 * it are then left out too. An own row whose formula is refused keeps its place, so that it can be mended there.
 */
export function catalogWith(worksheets: Readonly<Record<string, unknown>>, rows: OwnRows = {}): WithOwn {
  const refused: Problem[] = []
  if (Object.keys(worksheets).length + Object.keys(rows).length === 0) return { catalog: shippedCatalog(), refused }
  const ordered = ownRowsInOrder(rows)
  let left: Source[] = []
  for (const [id, json] of Object.entries(worksheets)) {
    const definition = readDefinition(json, id)
    if (isDefinition(definition)) left.push({ definition, file: id, shipped: false })
    else refused.push(...definition)
  }
  left.push(...ordered.map(sourceOf))
  const silenced = new Map<string, Problem>()
  let catalog = shippedCatalog()
  while (left.length > 0) {
    const built = buildCatalog([...SHIPPED, ...left], LOCKED)
    if (isCatalog(built)) {
      catalog = built
      break
    }
    const before = left
    left = left.flatMap((source) => {
      const [first, ...more] = built.filter(({ path }) => path[0] === source.file)
      if (!first) return [source]
      const row = ordered.find((own) => rowSourceId(own) === source.definition.id)
      if (row && !silenced.has(row.id) && first.path.at(-1) === 'formula') {
        silenced.set(row.id, { ...first, path: [] })
        return [sourceOf({ ...row, row: { ...row.row, formula: '0' } })]
      }
      refused.push(first, ...more)
      return []
    })
    // What is wrong with none of them cannot be helped by leaving one out.
    if (left.length === before.length && left.every((source, i) => source === before[i])) break
  }
  return { catalog: withOwnRows(judged(catalog, left, silenced, ordered), ordered), refused }
}

export function catalogFor(worksheets: Readonly<Record<string, unknown>>, rows: OwnRows = {}): Catalog {
  return catalogWith(worksheets, rows).catalog
}

function sourceOf(own: OwnRow): Source {
  const { id, row } = own
  const { range, ...rest } = row
  const definition: Source['definition'] = {
    format: 'basinbook-worksheet',
    version: 1,
    id: rowSourceId(own),
    edition: 1,
    takes: [],
    groups: [{ id: 'rows', rows: [range ? { ...rest, range: [range[0], range[1]] } : rest] }],
  }
  return { definition, file: id, shipped: false, takesAll: true }
}

/** The quantities of the reader's own whose number is not shown, with the reason: before anyone believes it. */
function judged(
  catalog: Catalog,
  own: readonly Source[],
  silenced: ReadonlyMap<string, Problem>,
  rows: readonly OwnRow[],
): Catalog {
  const ids = new Set(own.map(({ definition }) => definition.id))
  const scope = catalogUnits(catalog)
  const quantities = new Map<string, Quantity>(catalog.quantities)
  for (const [name, quantity] of quantities) {
    if (!ids.has(quantity.worksheet) || !quantity.formula) continue
    const said = 'units_as_said' in quantity.row && quantity.row.units_as_said === true
    const [flag] = said ? [] : unitFlags(quantity.formula.tree, scope, quantity.row.unit)
    if (flag) quantities.set(name, { ...quantity, refused: flag.problem })
  }
  for (const { id, row } of rows) {
    const why = silenced.get(id)
    const quantity = quantities.get(row.name)
    if (!why || !quantity?.formula || !('formula' in quantity.row)) continue
    const { formula: text } = row
    const shown = { row: { ...quantity.row, formula: text }, formula: { ...quantity.formula, text } }
    quantities.set(row.name, { ...quantity, ...shown, refused: why })
  }
  return { ...catalog, quantities }
}
