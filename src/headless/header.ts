import { readUnit } from '../units/readUnit'
import { isProblem, type Problem, problem } from '../words/problem'
import type { Catalog } from '../worksheet/catalog'

/** What a column of the command's input is. */
export type Column =
  | { readonly kind: 'sample' }
  | { readonly kind: 'date' }
  /** `unit` is what bare numbers of the column are in */
  | { readonly kind: 'quantity'; readonly name: string; readonly unit: string }
  | { readonly kind: 'unknown'; readonly heading: string }

/**
 * Reads the header: contract names, each with an optional unit in brackets (`temperature [°F]`). Names that are not of
 * the contract are unknown columns; a name that stands twice, or a unit that does not fit, is a problem.
 */
export function readHeader(cells: readonly string[], catalog: Catalog): readonly Column[] | Problem {
  const columns: Column[] = []
  const seen = new Set<string>()
  for (const cell of cells) {
    const column = readHeading(cell.trim(), catalog)
    if (isProblem(column)) return column
    const key = column.kind === 'quantity' ? column.name : column.kind
    if (column.kind !== 'unknown' && seen.has(key)) return problem('header_twice', [], { name: key })
    seen.add(key)
    columns.push(column)
  }
  if (!columns.some(({ kind }) => kind === 'quantity'))
    return problem('header_unknown', [], { found: cells.slice(0, 12) })
  return columns
}

function readHeading(heading: string, catalog: Catalog): Column | Problem {
  const open = heading.endsWith(']') ? heading.indexOf('[') : -1
  const name = (open < 0 ? heading : heading.slice(0, open)).trim()
  if (name === 'sample' || name === 'date') return { kind: name }
  const row = catalog.quantities.get(name)?.row
  if (!row) return { kind: 'unknown', heading }
  if (open < 0) return { kind: 'quantity', name, unit: row.unit }
  const unit = readUnit(heading.slice(open + 1, -1), row.unit, { profile: 'us', quantity: name })
  return isProblem(unit)
    ? problem('header_unit', [], { heading, found: heading.slice(open + 1, -1), unit: row.unit })
    : { kind: 'quantity', name, unit }
}
