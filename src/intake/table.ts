import { answerFor } from './answerFor'
import { isAnyUnit } from './columns'
import { readHeading } from './heading'
import type { Known } from './known'
import { numberIn } from './numbers'
import type { CsvRecord } from './records'
import { OF_RESULTS, ROLES, type Role } from './roles'
import { spelling } from './spelling'
import type { Answers, Shape } from './understanding'

/** Where the table is in a file, and which way it runs. */
export interface Table {
  readonly shape: Shape
  /** indexes into the records; of a transposed file, the row with the samples' names, -1 where there is none */
  readonly header: number
  readonly units: number | null
  /** of a transposed file: the column with the analytes' names, the one with their units, the first one with readings */
  readonly labels: number
  readonly unitColumn: number | null
  readonly firstSample: number
  /** how many cells were recognised: the measure by which a delimiter is chosen */
  readonly score: number
}

/** A header further down than this is none. */
const DEEPEST_HEADER = 60
const MOST_CELLS = 2_000

/** What headings are: remembered, since the same few are looked at again and again. */
export interface Lookup {
  (cell: string): Role | 'quantity' | null
  readonly known: ReadonlyMap<string, Known>
}

/** What was answered about a heading goes before what its spelling says. */
export function createLookup(known: ReadonlyMap<string, Known>, answers: Answers): Lookup {
  const seen = new Map<string, Role | 'quantity' | null>()
  const look = (cell: string): Role | 'quantity' | null => {
    const text = cell.trim()
    if (text === '' || text.length > 200 || /^[\d.,<>+\-\s:/]*$/.test(text)) return null
    const before = seen.get(text)
    if (before !== undefined) return before
    const answer = answerFor(answers, text)
    const given = answer.role ?? (answer.quantity === undefined ? undefined : 'quantity')
    const role = given ?? (text.startsWith('@') ? undefined : ROLES.get(spelling(text)))
    const found = role ?? (known.has(text) || readHeading(text, known).meaning !== null ? 'quantity' : null)
    seen.set(text, found)
    return found
  }
  return Object.assign(look, { known })
}

/** Finds the table among the first records; null where no row or column of headings is recognised. */
export function findTable(records: readonly CsvRecord[], look: Lookup): Table | null {
  const rows = records.slice(0, DEEPEST_HEADER)
  let best: Table | null = null
  for (const [i, { cells, broken }] of rows.entries()) {
    if (broken === true) continue
    const kinds = cells.slice(0, MOST_CELLS).map(look)
    const quantities = kinds.filter((kind) => kind === 'quantity').length
    const long = kinds.includes('analyte') && (kinds.includes('result') || kinds.includes('result_text'))
    if (quantities === 0 && !long) continue
    // sentences above the table name quantities too, but stand beside numbers or alone
    const numbers = cells.filter((cell) => numberIn(cell) !== null).length
    // of a row over samples across, what speaks of results is no heading of a column, and a sample `B` is not boron
    const told = kinds.filter((kind) => kind !== null && (long || !(kinds.includes('analyte') && isOfResults(kind))))
    const score = quantities + told.length - numbers * 3
    if (score <= 0 || (best !== null && score <= best.score)) continue
    best = { shape: long ? 'long' : 'wide', header: i, units: null, labels: 0, unitColumn: null, firstSample: 0, score }
  }
  const across = transposed(rows, look)
  if (across !== null && (best === null || (best.shape === 'wide' && across.score > best.score + 1))) return across
  return best === null ? null : { ...best, units: best.shape === 'wide' ? unitsRow(records, best.header, look) : null }
}

/** The row under the header that holds units and nothing else. */
function unitsRow(records: readonly CsvRecord[], header: number, look: Lookup): number | null {
  const below = records[header + 1]
  const headings = records[header]?.cells ?? []
  if (below === undefined) return null
  const filled = below.cells.flatMap((cell, i) => (cell.trim() === '' ? [] : [{ cell, kind: look(headings[i] ?? '') }]))
  const measured = filled.filter(({ kind }) => kind === 'quantity')
  const units = measured.filter(({ cell }) => isAnyUnit(cell, look.known) || /^[-–—]$/.test(cell.trim()))
  const real = measured.filter(({ cell }) => isAnyUnit(cell, look.known) && numberIn(cell) === null)
  return real.length > 0 && units.length * 2 > measured.length ? header + 1 : null
}

/** Analytes down, samples across. */
function transposed(rows: readonly CsvRecord[], look: Lookup): Table | null {
  let best: Table | null = null
  for (const labels of [0, 1]) {
    const named = rows.flatMap(({ cells }, i) => (look(cells[labels] ?? '') === 'quantity' ? [i] : []))
    const [first = 0] = named
    const different = new Set(named.map((i) => spelling(rows[i]?.cells[labels] ?? ''))).size
    if (named.length < 2 || (best !== null && named.length * 2 <= best.score)) continue
    const unitColumn = unitsIn(rows, named, labels + 1, look)
    const firstSample = (unitColumn ?? labels) + 1
    // names that come again and again are analytes of a file with one result a row
    const again = different < 0.8 * named.length
    if (again && (different < 2 || !besideEachOther(rows, named, labels, firstSample, look))) continue
    const numbers = named.filter((i) =>
      (rows[i]?.cells ?? []).slice(firstSample).some((cell) => numberIn(cell) !== null),
    )
    if (numbers.length * 2 < named.length) continue
    const header = headerAbove(rows, first, labels, firstSample, look)
    best = { shape: 'transposed', header, units: null, labels, unitColumn, firstSample, score: named.length * 2 }
  }
  return best
}

/**
 * Whether samples stand side by side under a header that names the analytes' column and none for results: then an
 * analyte that comes again was measured again.
 */
function besideEachOther(
  rows: readonly CsvRecord[],
  named: readonly number[],
  labels: number,
  from: number,
  look: Lookup,
): boolean {
  const header = rows.slice(0, named[0]).find(({ cells }) => look(cells[labels] ?? '') === 'analyte')
  if (labels !== 0 || header === undefined) return false
  if (header.cells.slice(from).some((cell) => isOfResults(look(cell)))) return false
  const several = named.filter((i) => (rows[i]?.cells ?? []).slice(from).filter((c) => c.trim() !== '').length > 1)
  return several.length * 2 > named.length
}

function isOfResults(kind: Role | 'quantity' | null): boolean {
  return kind !== null && OF_RESULTS.has(kind)
}

function unitsIn(rows: readonly CsvRecord[], named: readonly number[], column: number, look: Lookup): number | null {
  const filled = named.map((i) => rows[i]?.cells[column]?.trim() ?? '').filter((cell) => !/^[-–—]?$/.test(cell))
  const units = filled.filter((cell) => isAnyUnit(cell, look.known) && numberIn(cell) === null)
  return units.length > 0 && units.length * 2 > filled.length ? column : null
}

/** The row with the samples' names: the one that says so, else the first of the fullest above the first analyte. */
function headerAbove(rows: readonly CsvRecord[], first: number, labels: number, from: number, look: Lookup): number {
  const filled = (i: number) => (rows[i]?.cells ?? []).slice(from).filter((cell) => cell.trim() !== '').length
  const above = [...Array(first).keys()].filter((i) => filled(i) > 0)
  const said = above.find((i) => ['sample', 'analyte', 'place'].includes(look(rows[i]?.cells[labels] ?? '') ?? ''))
  const unsaid = above.filter((i) => !['date', 'time'].includes(look(rows[i]?.cells[labels] ?? '') ?? ''))
  const [fullest] = unsaid.sort((a, b) => filled(b) - filled(a))
  return said ?? fullest ?? -1
}
