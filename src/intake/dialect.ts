import { type CsvRecord, createCsvReader, declaredDelimiter } from './records'
import { findTable, type Lookup, type Table } from './table'

/** How the text of a file is cut into records, with the records of the part that was looked at. */
export interface Dialect {
  readonly delimiter: string
  readonly records: readonly CsvRecord[]
  readonly table: Table | null
}

const EVEN = 0.8

const DELIMITERS = [',', ';', '\t', '|'] as const

/**
 * Finds the delimiter: the one that a `sep=` line declares, else the one under which most headings are recognised, else
 * the one that cuts the lines most evenly. `whole` says that the text is all there, so that its last line counts.
 */
export function findDialect(text: string, look: Lookup, whole: boolean, given?: string): Dialect {
  const declared = given ?? declaredDelimiter(text)
  if (declared !== null) return cut(text, declared, look, whole)
  const tried = DELIMITERS.map((delimiter) => cut(text, delimiter, look, whole))
  const [first, ...others] = tried
  return others.reduce((best, next) => (better(next, best) ? next : best), first ?? cut(text, ',', look, whole))
}

function cut(text: string, delimiter: string, look: Lookup, whole: boolean): Dialect {
  const reader = createCsvReader(delimiter)
  const records = reader.push(text)
  if (whole) records.push(...reader.end())
  return { delimiter, records, table: findTable(records, look) }
}

function better(a: Dialect, b: Dialect): boolean {
  const [scoreA, scoreB] = [a.table?.score ?? 0, b.table?.score ?? 0]
  // one that cuts no line at all finds its heading inside the lines that another cuts evenly
  if (evenness(a) === 0 && evenness(b) > EVEN) return false
  if (evenness(b) === 0 && evenness(a) > EVEN) return true
  return scoreA === scoreB ? evenness(a) > evenness(b) : scoreA > scoreB
}

/** The share of filled lines that have the commonest number of cells; 0 where that is one cell. */
function evenness({ records }: Dialect): number {
  const counts = new Map<number, number>()
  for (const { cells } of records) if (cells.length > 1) counts.set(cells.length, (counts.get(cells.length) ?? 0) + 1)
  return Math.max(0, ...counts.values()) / Math.max(1, records.length)
}
