import { emptyCells, STYLE, textCell, valueCell } from './odsCells'
import { NAMESPACES } from './odsNamespaces'
import { automaticStyles } from './odsStyles'
import type { Sheet, SheetBook, SheetRow, SheetWords } from './sheet'
import { document, element } from './xml'

/** Columns before the first scenario and after the last. */
const BEFORE = 3
const AFTER = 2

/** `content.xml`: one table for each worksheet, and one that says where the numbers come from. No cell holds a formula. */
export function contentXml(book: SheetBook): string {
  const names = tableNames([...book.sheets.map(({ title }) => title), book.words.sources])
  const tables = book.sheets.map((sheet, i) => worksheetTable(sheet, names[i] ?? '', book.words))
  const sources = sourcesTable(book.sources, names.at(-1) ?? '')
  return document(
    element(
      'office:document-content',
      { ...NAMESPACES, 'office:version': '1.3' },
      automaticStyles(),
      element('office:body', {}, element('office:spreadsheet', {}, ...tables, sources)),
    ),
  )
}

function worksheetTable(sheet: Sheet, name: string, words: SheetWords): string {
  const width = BEFORE + sheet.scenarios.length + AFTER
  const sampled = sheet.scenarios.some(({ sample }) => sample !== '')
  const rows = [
    row(textCell(sheet.title, STYLE.title), emptyCells(width - 1)),
    element(
      'table:table-header-rows',
      {},
      row(
        ...[words.quantity, words.name, words.unit].map((text) => textCell(text, STYLE.head)),
        ...sheet.scenarios.map(({ name: scenario }) => textCell(scenario, STYLE.headFigure)),
        ...[words.formula, words.functions].map((text) => textCell(text, STYLE.head)),
      ),
    ),
    ...(sampled
      ? [
          row(
            textCell(words.sample, STYLE.quiet),
            emptyCells(BEFORE - 1),
            ...sheet.scenarios.map(({ sample }) => textCell(sample, STYLE.quiet)),
            emptyCells(AFTER),
          ),
        ]
      : []),
    ...sheet.groups.flatMap((group) => [
      row(textCell(group.label, STYLE.group), emptyCells(width - 1)),
      ...group.rows.map(quantityRow),
    ]),
  ]
  return element(
    'table:table',
    { 'table:name': name },
    column('wide'),
    column('name'),
    column('unit'),
    column('cell', sheet.scenarios.length),
    column('wide'),
    column('wide'),
    ...rows,
  )
}

function quantityRow({ name, label, unit, cells, formula, functions }: SheetRow): string {
  return row(
    textCell(label, STYLE.label),
    textCell(name, STYLE.quiet),
    textCell(unit, STYLE.quiet),
    ...cells.map(valueCell),
    textCell(formula, STYLE.quiet),
    textCell(functions, STYLE.quiet),
  )
}

function sourcesTable(lines: SheetBook['sources'], name: string): string {
  const width = Math.max(1, ...lines.map((line) => line.length))
  const rows = lines.map((line) => {
    const style = line.length === 1 ? STYLE.group : STYLE.wrap
    return row(...line.map((text) => textCell(text, style)), emptyCells(width - line.length))
  })
  const [first = row(emptyCells(width)), ...others] = rows
  return element('table:table', { 'table:name': name }, column('wide', width), first, ...others)
}

function row(...cells: readonly string[]): string {
  return element('table:table-row', {}, ...cells)
}

function column(style: string, count = 1): string {
  if (count === 0) return ''
  return element('table:table-column', {
    'table:style-name': style,
    'table:number-columns-repeated': count === 1 ? undefined : count,
  })
}

/** Names of tables differ, are not empty and hold none of the marks by which spreadsheets write addresses. */
function tableNames(titles: readonly string[]): readonly string[] {
  const taken = new Set<string>()
  return titles.map((title) => {
    const plain =
      title
        .replace(/[[\]*?:/\\'\p{Cc}]/gu, ' ')
        .replace(/\s+/g, ' ')
        .trim() || '–'
    let name = plain
    for (let number = 2; taken.has(name.toLowerCase()); number++) name = `${plain} ${number}`
    taken.add(name.toLowerCase())
    return name
  })
}
