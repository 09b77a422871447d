import './smallHeap'
import './allWords'
import { createReadStream } from 'node:fs'
import { Batch, type Given } from '../engine/batch'
import { hasValue, type Outcome } from '../engine/outcome'
import type { Value } from '../functions/define'
import { parseEntry } from '../units/parseEntry'
import { isProblem, type Problem, problem } from '../words/problem'
import { say, sentence } from '../words/say'
import type { Catalog } from '../worksheet/catalog'
import { shippedCatalog } from '../worksheet/shippedCatalog'
import { readCases } from './cases'
import { openInput } from './input'
import { type Options, readOptions } from './options'
import { planTable } from './plan'
import { isWorkedOutWord, outsideAccept, type ReadRow, readChoice, readRow } from './readRow'
import type { Table } from './table'
import { withVolumeInterval } from './volumeInterval'

/** The worksheet that is a list of steps, and is asked for alone. */
const PLAN = 'plan'

/** Rows that go through the engine together. */
const TOGETHER = 32

/**
 * The command `evaluate`: CSV of readings in, CSV of results out, streaming.
 * @returns the exit status: 0; 1 when a row was refused; 2 for usage or ambiguity, with nothing written
 */
async function evaluate(args: readonly string[]): Promise<number> {
  const options = readOptions(args)
  if (isProblem(options)) return usage(options)
  const catalog = shippedCatalog()
  const wanted = wantedQuantities(options, catalog)
  if (isProblem(wanted)) return usage(wanted)
  const set = readSet(options.set, catalog)
  if (isProblem(set)) return usage(set)
  const cases = await readCases(options.cases)
  if (!('chosen' in cases)) return usage(...cases)
  const bytes = options.file === '-' ? process.stdin : createReadStream(options.file)
  const input = await openInput(bytes[Symbol.asyncIterator](), catalog, options).catch((error: unknown) =>
    problem('input_not_opened', [options.file], { why: error instanceof Error ? error.message : String(error) }),
  )
  if (isProblem(input)) return usage(input)
  for (const column of input.columns) {
    if (column.kind === 'quantity' && set.has(column.name))
      return usage(problem('given_twice', [], { name: column.name }))
  }
  const unknown = input.columns.flatMap((column) => {
    if (column.kind === 'unknown') return [column.heading]
    return column.kind === 'quantity' && isWorkedOutWord(catalog.quantities.get(column.name)?.row) ? [column.name] : []
  })
  if (unknown.length > 0) complain(say('headless.columns_not_used', { names: unknown }))

  const dated = input.columns.some(({ kind }) => kind === 'date')
  const table = options.worksheets.includes(PLAN) ? planTable(cases) : valueTable(catalog, wanted, dated)
  await print([table.header])
  const rules = { catalog, columns: input.columns, decimal: input.decimal, censored: options.censored, set }
  let refused = 0
  let rows: ReadRow[] = []
  const flush = async () => {
    await print(table.lines(rows))
    rows = []
  }
  for await (const record of input.records) {
    const row = readRow(record, rules)
    if (Array.isArray(row)) {
      refused++
      for (const wrong of row as readonly Problem[]) complain(sentence(wrong))
      continue
    }
    rows.push(row as ReadRow)
    if (rows.length === TOGETHER) await flush()
  }
  if (rows.length > 0) await flush()
  return refused > 0 ? 1 : 0
}

/** The computed quantities of the named worksheets in contract order, then those of `--only`. */
function wantedQuantities({ worksheets, only }: Options, catalog: Catalog): readonly string[] | Problem {
  const known = catalog.worksheets.map(({ id }) => id)
  const wanted: string[] = []
  if (worksheets.includes(PLAN) && worksheets.length + only.length > 1) return problem('usage_plan_alone')
  for (const id of worksheets) {
    if (!known.includes(id)) return problem('usage_worksheet', [], { found: id, accepted: known })
    for (const { name, worksheet, formula } of catalog.quantities.values()) {
      if (worksheet === id && formula) wanted.push(name)
    }
  }
  for (const name of only) {
    if (!catalog.quantities.has(name)) return problem('usage_quantity', [], { found: name })
    wanted.push(name)
  }
  return [...new Set(wanted)]
}

/** `--set volume=15000 gal`: a bare number is in the contract's unit, a gallon is the US one. */
function readSet(set: Options['set'], catalog: Catalog): Given | Problem {
  const given = new Map<string, Value>()
  for (const [name, text] of set) {
    const row = catalog.quantities.get(name)?.row
    if (!row) return problem('usage_quantity', [], { found: name })
    if (row.unit === 'choice') {
      const choice = readChoice(text, row)
      if (isProblem(choice)) return { ...choice, path: [`--set ${name}`] }
      given.set(name, choice)
      continue
    }
    const entry = parseEntry(text, row.unit, { profile: 'us', displayed: row.unit, quantity: name })
    if (entry === null || entry === 'not_taken') return problem('usage_set', [], { found: `${name}=${text}` })
    if (isProblem(entry)) return { ...entry, path: [`--set ${name}`] }
    const outside = outsideAccept(row, entry.canonical)
    if (outside) return { ...outside, path: [`--set ${name}`] }
    given.set(name, entry.canonical)
  }
  return given
}

/** One line a row: the wanted quantities, then the notices of all that they rest on. */
function valueTable(catalog: Catalog, wanted: readonly string[], dated: boolean): Table {
  const batch = new Batch(catalog, wanted, TOGETHER)
  return {
    header: ['sample', ...(dated ? ['date'] : []), ...wanted, 'notices'],
    lines: (rows) => {
      const results = batch.evaluate(rows.map((row) => withVolumeInterval(row.given)))
      return rows.map((row, i) => {
        const outcomes = results[i] ?? []
        const notices = noticesOf(row, outcomes, wanted, batch.notices(i))
        return [row.sample, ...(dated ? [row.date] : []), ...outcomes.map(written), notices.join(' ')]
      })
    },
  }
}

function noticesOf(
  row: ReadRow,
  outcomes: readonly Outcome[],
  wanted: readonly string[],
  raised: Iterable<string>,
): string[] {
  const notices = new Set<string>()
  outcomes.forEach((outcome, i) => {
    if (hasValue(outcome)) return
    const { code, facts } = outcome.problem
    const names = code === 'missing' && Array.isArray(facts.names) ? facts.names : []
    for (const name of names) notices.add(`missing:${String(name).split('|')[0]}`)
    if (code !== 'missing')
      notices.add(`${code.replace('argument_', '')}:${facts.quantity ?? facts.parameter ?? facts.name ?? wanted[i]}`)
  })
  for (const notice of [...row.notices, ...raised]) notices.add(notice)
  return [...notices]
}

function written(outcome: Outcome): string {
  return hasValue(outcome) ? String(outcome.value) : ''
}

function csv(cell: string): string {
  return /[",\n\r]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell
}

/** Writes lines and waits while the reader on the other side is slow, so that nothing piles up. */
function print(lines: readonly (readonly string[])[]): Promise<void> {
  const text = lines.map((cells) => `${cells.map(csv).join(',')}\n`).join('')
  return new Promise((done) => {
    if (process.stdout.write(text)) done()
    else process.stdout.once('drain', done)
  })
}

function complain(text: string): void {
  process.stderr.write(`${text}\n`)
}

function usage(...wrong: readonly Problem[]): 2 {
  for (const one of wrong) complain(sentence(one))
  complain(say('headless.usage'))
  return 2
}

// A reader that stops early (`| head`) is no error.
process.stdout.on('error', (error: NodeJS.ErrnoException) => process.exit(error.code === 'EPIPE' ? 0 : 2))
process.exitCode = await evaluate(process.argv.slice(2))
