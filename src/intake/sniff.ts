import { problem } from '../words/problem'
import { answerFor } from './answerFor'
import { answerProblems } from './answerProblems'
import { type Matched, matchColumn } from './columns'
import { createDecoder, type Encoding, findEncoding } from './decode'
import { findDialect } from './dialect'
import { doubtsOf } from './doubts'
import { dateEvidence, decimalEvidence, unitByReadings } from './evidence'
import type { Known } from './known'
import { besideOf, type RawColumn, rawColumns } from './layout'
import { matchAnalyte } from './matchAnalyte'
import { OF_RESULTS } from './roles'
import { signDoubts } from './signDoubts'
import { createLookup, type Lookup, type Table } from './table'
import type { Answers, Column, Question, Understanding } from './understanding'
import { likeOthers, unitOfOthers } from './unitOfOthers'

/** As much of a file as is looked at: some thousands of rows. */
export const HEAD_BYTES = 262_144

const PREVIEW_ROWS = 30

/** How files begin that are no text table: zip archives (spreadsheets), PDF, RTF, web pages. */
const NOT_TABLES = ['pk\u0003\u0004', '%pdf', '{\\rtf', '<!doctype', '<html', '<?xml']

/**
 * Understands a file from its first part (bytes, or text that is already decoded) and from the answers given so far.
 * `whole` says that this part is the entire file. It never throws: what cannot be read at all is in `problems`, what must be
 * asked in `questions`, and only where both are empty may the file be imported.
 */
export function sniff(
  head: Uint8Array | string,
  known: readonly Known[],
  answers: Answers = {},
  whole = true,
): Understanding {
  const encoding = typeof head === 'string' ? 'utf-8' : findEncoding(head)
  const nothing: Understanding = {
    encoding,
    delimiter: answers.delimiter ?? ',',
    shape: 'wide',
    headerRow: 0,
    unitsRow: null,
    decimal: answers.decimal ?? null,
    dates: answers.dates ?? null,
    columns: [],
    analytes: [],
    beside: { ions: false, french: false },
    across: { labels: 0, unitColumn: null, firstSample: 0 },
    bySample: true,
    questions: [],
    problems: [],
    doubts: [],
    preview: [],
    known,
    answers,
  }
  const text = typeof head === 'string' ? head : decoded(head, encoding, whole)
  if (text.trim() === '') return { ...nothing, problems: [problem('lab_empty_file')] }
  if (text.includes('\0') || NOT_TABLES.some((start) => text.trimStart().toLowerCase().startsWith(start))) {
    return { ...nothing, problems: [problem('lab_not_a_table')] }
  }
  const byName = new Map(known.map((one) => [one.name, one]))
  const look = createLookup(byName, answers)
  const { delimiter, records, table } = findDialect(text, look, whole, answers.delimiter)
  const first = { ...nothing, delimiter, preview: records.slice(0, PREVIEW_ROWS) }
  if (table === null) return { ...first, problems: [problem('lab_no_header')] }
  return understood(first, table, rawColumns(records, table, look), look, records)
}

function understood(
  base: Understanding,
  table: Table,
  raw: readonly RawColumn[],
  look: Lookup,
  records: Understanding['preview'],
): Understanding {
  const { answers } = base
  const { known } = look
  const beside = besideOf(raw, look)
  const matched = raw.map((one) => {
    const context = { ...beside, unit: one.unit }
    const answer = answerFor(answers, one.heading)
    if (one.kind === 'column') return { raw: one, ...matchColumn(one.index, one.heading, known, context, answer) }
    const alone = matchAnalyte(one.index, one.heading, known, context, answer)
    if (one.elsewhere === undefined || answer.unit !== undefined) return { raw: one, ...alone }
    const stated = matchAnalyte(one.index, one.heading, known, { ...context, unit: one.elsewhere.unit }, answer)
    return { raw: one, ...unitOfOthers(alone, stated) }
  })
  const cells = matched.flatMap(({ raw: { texts }, column }) => {
    const one = known.get(column.quantity ?? '')
    return one === undefined ? [] : [{ known: one, unit: column.unit, texts }]
  })
  const marks = answers.decimal ?? decimalEvidence(cells, base.delimiter)
  const decimal = marks === '.' || marks === ',' ? marks : null
  const questions: Question[] = []
  if (marks === 'mixed' || marks === 'ambiguous') {
    questions.push({ code: 'decimal_mark', heading: null, facts: { found: exampleOf(matched) }, choices: [',', '.'] })
  }
  const dated = matched.filter(({ column }) => column.role === 'date').flatMap(({ raw: { texts } }) => texts)
  const orders = answers.dates === undefined ? dateEvidence(dated) : [answers.dates]
  if (orders !== null && orders.length !== 1) {
    const choices = orders.length === 0 ? ['dmy', 'mdy', 'ymd'] : orders
    questions.push({ code: 'date_order', heading: null, facts: { found: dated[0] ?? '' }, choices })
  }
  const settled = onlyOnce(
    matched.map((one) => settle(one, known, decimal, questions)),
    table.shape,
  )
  const columns = settled.filter((_, i) => raw[i]?.kind === 'column').map((one) => inShape(one, table.shape))
  const analytes = settled.filter((_, i) => raw[i]?.kind === 'analyte')
  const under = (table.units ?? table.header) + 1
  const answer: Understanding = {
    ...base,
    shape: table.shape,
    headerRow: records[table.header]?.row ?? 0,
    unitsRow: table.units === null ? null : (records[table.units]?.row ?? null),
    decimal,
    dates: orders?.length === 1 ? (orders[0] ?? null) : null,
    columns,
    analytes,
    beside,
    across: table,
    bySample: beside.bySample,
    questions: questions.filter(
      ({ heading }) => heading === null || settled.some((c) => c.heading === heading && c.role === 'quantity'),
    ),
    preview: records.slice(table.shape === 'transposed' ? Math.max(0, table.header) : under, under + PREVIEW_ROWS),
  }
  return {
    ...answer,
    problems: answerProblems(answers, settled, known),
    doubts: [...doubtsOf(settled, raw, known, decimal), ...signDoubts(settled, raw, answer)],
  }
}

function decoded(head: Uint8Array, encoding: Encoding, whole: boolean): string {
  const decoder = createDecoder(encoding)
  const text = decoder.push(head)
  return whole ? text + decoder.end() : text
}

type Tried = Matched & { readonly raw: RawColumn }

/** The unit of a column whose heading leaves it unsaid, or the question that decides. */
function settle(
  one: Tried,
  known: ReadonlyMap<string, Known>,
  decimal: Understanding['decimal'],
  questions: Question[],
): Column {
  const { column, units, raw } = one
  if (one.question !== null) questions.push(one.question)
  const quantity = known.get(column.quantity ?? '')
  if (quantity === undefined || units.length < 2) return column
  const unit = likeOthers(units, quantity, raw, decimal)
    ? (units[0] ?? null)
    : unitByReadings(units, quantity, raw.texts, decimal)
  if (unit === null) {
    const facts = { heading: column.heading, found: '', quantity: quantity.name }
    questions.push({ code: 'which_unit', heading: column.heading, facts, choices: units.map(({ code }) => code) })
    return { ...column, unit: null }
  }
  if (unit === units[0]) return column
  const why = [
    ...column.why.filter(({ code }) => code !== 'unit_unsaid' && code !== 'unit_of_others'),
    { code: 'unit_by_readings', facts: { unit: unit.code } },
  ]
  return { ...column, unit, why, confidence: Math.min(column.confidence, 0.75) }
}

/**
 * One column a quantity and a role: the surest, at equal terms the first. The others are kept as notes and say so. In a
 * long file several analytes may name one quantity, and one of a transposed file may come again; there the rule for
 * repeated readings decides.
 */
function onlyOnce(columns: readonly Column[], shape: Understanding['shape']): readonly Column[] {
  const purpose = ({ role, quantity }: Column) => (role === 'quantity' ? quantity : role === 'note' ? null : role)
  const best = new Map<string, Column>()
  for (const column of columns) {
    const key = purpose(column)
    const rival = best.get(key ?? '')
    if (key !== null && (rival === undefined || column.confidence > rival.confidence)) best.set(key, column)
  }
  return columns.map((column) => {
    const kept = best.get(purpose(column) ?? '')
    if (kept === undefined || kept === column || (shape === 'long' && column.role === 'quantity')) return column
    if (shape === 'transposed' && kept.heading === column.heading && kept.unitText === column.unitText) return column
    const why = [{ code: 'second_of', facts: { quantity: purpose(column) ?? '', heading: kept.heading } }]
    return { ...column, role: 'note', quantity: null, unit: null, confidence: 0, why }
  })
}

/** A column whose meaning this shape of file has no use for is kept as a note. */
function inShape(column: Column, shape: Understanding['shape']): Column {
  const note = (code: string): Column => {
    return { ...column, role: 'note', quantity: null, unit: null, confidence: 0, why: [{ code, facts: {} }] }
  }
  if (shape === 'long') return column.role === 'quantity' ? note('beside_results') : column
  return OF_RESULTS.has(column.role) && shape === 'wide' ? note('unknown') : column
}

function exampleOf(matched: readonly Tried[]): string {
  const texts = matched.filter(({ column }) => column.quantity !== null).flatMap(({ raw }) => raw.texts)
  return texts.find((text) => /\d[.,]\d{3}(?!\d)/.test(text)) ?? texts.find((text) => /\d[.,]\d/.test(text)) ?? ''
}
