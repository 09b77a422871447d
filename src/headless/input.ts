import { createDecoder, findEncoding } from '../intake/decode'
import { decimalMark, numberIn } from '../intake/numbers'
import { type CsvReader, type CsvRecord, createCsvReader, declaredDelimiter } from '../intake/records'
import type { DecimalMark } from '../units/readNumber'
import { isProblem, type Problem, problem } from '../words/problem'
import type { Catalog } from '../worksheet/catalog'
import { type Column, readHeader } from './header'

/** How much of the input is looked at before anything is written. */
const HEAD = 65_536
const DELIMITERS = [',', ';', '\t', '|'] as const

export interface Input {
  readonly columns: readonly Column[]
  readonly decimal: DecimalMark
  /** the records under the header, blank ones left out */
  readonly records: AsyncIterable<CsvRecord>
}

/**
 * Opens the command's input: finds encoding, delimiter, header and decimal mark from its first part, then hands on
 * record by record, so that memory does not grow with the file. What is open or wrong is a problem, before any record.
 */
export async function openInput(
  bytes: AsyncIterator<Uint8Array>,
  catalog: Catalog,
  given: { readonly delimiter: string | null; readonly decimal: DecimalMark | null },
): Promise<Input | Problem> {
  const head = await readHead(bytes)
  const decoder = createDecoder(findEncoding(head.bytes))
  const text = decoder.push(head.bytes) + (head.whole ? decoder.end() : '')
  const delimiter = given.delimiter ?? declaredDelimiter(text) ?? likeliest(text, catalog)
  const reader = createCsvReader(delimiter)
  const first = reader.push(text)
  if (head.whole) first.push(...reader.end())
  const filled = first.filter(isFilled)
  const [header, ...records] = filled
  if (!header) return problem('input_empty')
  const columns = readHeader(header.cells, catalog)
  if (isProblem(columns)) return columns
  const decimal = given.decimal ?? findDecimal(records, columns, delimiter)
  if (isProblem(decimal)) return decimal
  const rest = head.whole ? none() : remaining(bytes, decoder, reader)
  return { columns, decimal, records: chain(records, rest) }
}

async function readHead(bytes: AsyncIterator<Uint8Array>): Promise<{ bytes: Uint8Array; whole: boolean }> {
  const parts: Uint8Array[] = []
  let length = 0
  while (length < HEAD) {
    const { value, done } = await bytes.next()
    if (done) return { bytes: Buffer.concat(parts), whole: true }
    parts.push(value)
    length += value.length
  }
  return { bytes: Buffer.concat(parts), whole: false }
}

/** The delimiter under which most of the first line's cells are names of the contract; else the one that cuts it most. */
function likeliest(text: string, catalog: Catalog): string {
  const line = text.trimStart().split(/\r|\n/, 1)[0] ?? ''
  const score = (delimiter: string) => {
    const cells = line.split(delimiter).map((cell) => cell.replaceAll('"', '').split('[')[0]?.trim() ?? '')
    return cells.filter((cell) => catalog.quantities.has(cell) || cell === 'sample').length * 1_000 + cells.length
  }
  return DELIMITERS.reduce((best, next) => (score(next) > score(best) ? next : best))
}

/** The one decimal mark that the numbers show. A point in a file cut by commas is a decimal point. */
function findDecimal(
  records: readonly CsvRecord[],
  columns: readonly Column[],
  delimiter: string,
): DecimalMark | Problem {
  const marks = new Set<DecimalMark | 'ambiguous'>()
  let example = ''
  for (const { cells } of records) {
    columns.forEach(({ kind }, i) => {
      const number = kind === 'quantity' ? numberIn(cells[i] ?? '') : null
      const mark = number === null ? null : decimalMark(number)
      if (mark === null) return
      if (mark === 'ambiguous') example = number ?? ''
      marks.add(mark === 'ambiguous' && delimiter === ',' && number?.includes('.') ? '.' : mark)
    })
  }
  if (marks.has('.') && marks.has(',')) return problem('decimal_mixed', [], { flag: '--decimal' })
  if (marks.has('.')) return '.'
  if (marks.has(',')) return ','
  return marks.size === 0 ? '.' : problem('decimal_ambiguous', [], { found: example, flag: '--decimal' })
}

async function* remaining(
  bytes: AsyncIterator<Uint8Array>,
  decoder: ReturnType<typeof createDecoder>,
  reader: CsvReader,
): AsyncIterable<CsvRecord> {
  for (let next = await bytes.next(); !next.done; next = await bytes.next())
    yield* reader.push(decoder.push(next.value))
  yield* reader.push(decoder.end())
  yield* reader.end()
}

async function* none(): AsyncIterable<CsvRecord> {}

async function* chain(first: readonly CsvRecord[], rest: AsyncIterable<CsvRecord>): AsyncIterable<CsvRecord> {
  yield* first
  for await (const record of rest) if (isFilled(record)) yield record
}

function isFilled({ cells }: CsvRecord): boolean {
  return cells.some((cell) => cell.trim() !== '')
}
