import type { Catalog, Quantity } from './catalog'
import type { Definition } from './definition'
import type { OwnRow } from './ownRow'

/** Own rows at their places among the worksheets' rows; a worksheet that is gone leaves its rows to the first. */
export function withOwnRows(catalog: Catalog, rows: readonly OwnRow[]): Catalog {
  const worksheets = catalog.worksheets.filter(({ id }) => !isRowSource(id))
  const home = (row: OwnRow) => worksheets.find(({ id }) => id === row.worksheet) ?? worksheets[0]
  const quantities = new Map<string, Quantity>(catalog.quantities)
  for (const row of rows) {
    const quantity = quantities.get(row.row.name)
    const worksheet = home(row)?.id
    // A name that means another quantity was refused to the row.
    if (quantity?.worksheet === rowSourceId(row) && worksheet !== undefined)
      quantities.set(quantity.name, { ...quantity, worksheet, own: row.id })
  }
  return {
    ...catalog,
    quantities,
    worksheets: worksheets.map((definition) =>
      rows
        .filter((row) => home(row) === definition && quantities.get(row.row.name)?.own === row.id)
        .reduce(placed, definition),
    ),
  }
}

/** The id of the source that stands for one own row: no worksheet can have it. */
export function rowSourceId({ id }: OwnRow): string {
  return `row ${id}`
}

function isRowSource(worksheet: string): boolean {
  return worksheet.startsWith('row ')
}

/** After its quantity, and after the own rows that stand there already. */
function placed(
  definition: Definition,
  { after, row: { name } }: OwnRow,
  _: number,
  all: readonly OwnRow[],
): Definition {
  const siblings = new Set(all.filter((other) => other.after === after).map((other) => other.row.name))
  const found = definition.groups.findIndex(({ rows }) => rows.some((row) => nameOf(row) === after))
  const last = definition.groups.findLastIndex(({ hidden }) => hidden !== true)
  const groups = definition.groups.map((group, at) => {
    if (at !== (found < 0 ? last : found)) return group
    const rows = [...group.rows]
    let place = found < 0 ? rows.length : rows.findIndex((row) => nameOf(row) === after) + 1
    while (found >= 0 && siblings.has(nameOf(rows[place] ?? ''))) place += 1
    rows.splice(place, 0, name)
    return { ...group, rows }
  })
  return { ...definition, groups }
}

function nameOf(row: Definition['groups'][number]['rows'][number]): string {
  return typeof row === 'string' ? row : row.name
}
