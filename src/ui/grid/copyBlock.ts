import { hasValue } from '../../engine/outcome'
import type { Cell } from '../../notebook/notebook'
import { convert } from '../../units/convert'
import { locale } from '../../words/locale'
import { say } from '../../words/say'
import type { OutlineQuantity } from '../../worksheet/catalog'
import { labelOf } from '../labelOf'
import type { Book } from '../shell/book'
import type { Block } from '../shell/selection'
import { unitWords } from '../unitWords'
import { wordOf } from './cellView'
import { limitSign } from './limitText'

/** A cell as the notebook itself takes it back: what stands in it, formulas, units and "not taken" included. */
export interface Copied {
  readonly quantity: string
  /** null: nothing stands there */
  readonly cell: Cell | null
  /** entered in this very cell; in a worked-out row that is an assumption */
  readonly typed: boolean
}

export interface CopiedBlock {
  /** tab-separated, for other spreadsheets */
  readonly text: string
  /** the same as a table */
  readonly html: string
  readonly cells: readonly (readonly Copied[])[]
}

/** The cells of a block for the clipboard; `named` puts the scenarios' names over them, quantities and units beside. */
export function copyBlock(book: Book, { rows, scenarios }: Block, named: boolean): CopiedBlock {
  const values = rows.map(({ quantity }) => scenarios.map((scenario) => fieldOf(book, scenario, quantity)))
  const names = scenarios.map((scenario) => harmless(book.scenario(scenario)?.name ?? ''))
  const table = named
    ? [
        [say('page.col.quantity'), say('page.col.unit'), ...names],
        ...rows.map(({ quantity: { name, row } }, at) => [
          harmless(labelOf(name, row)),
          unitWords(book.unit(name)),
          ...(values[at] ?? []),
        ]),
      ]
    : values
  return {
    text: table.map((row) => row.map(quoted).join('\t')).join('\n'),
    html: `<table>${table.map((row) => `<tr>${row.map((field) => `<td>${escaped(field)}</td>`).join('')}</tr>`).join('')}</table>`,
    cells: rows.map(({ quantity }) => scenarios.map((scenario) => copied(book, scenario, quantity.name))),
  }
}

/**
 * A number as the reader's other programs read it, in the unit that is shown: with the reader's decimal mark, which is also the one by which
 * this page reads it back, and no marks between groups. Empty where there is no value.
 */
export function fieldOf(book: Book, scenario: string, { name }: OutlineQuantity): string {
  const outcome = book.outcome(scenario, name)
  const { cell } = book.source(scenario, name)
  if (!hasValue(outcome))
    return cell?.kind === 'limit' ? `${limitSign(cell)} ${marked(shownNumber(book, name, cell.canonical))}` : ''
  if (typeof outcome.value === 'number') return marked(shownNumber(book, name, outcome.value))
  return harmless(wordOf(name, outcome.value))
}

/** As many digits as tell something: a third is not a measure of the machine. */
const DIGITS = 12

function marked(figures: string): string {
  return figures.replace('.', locale().decimal)
}

/** With a point, as what was entered is kept. */
function shownNumber(book: Book, quantity: string, canonical: number): string {
  const own = book.catalog().quantities.get(quantity)?.row.unit ?? '1'
  const shown = convert(canonical, own, book.unit(quantity))
  return String(Number((typeof shown === 'number' ? shown : canonical).toPrecision(DIGITS)))
}

function copied(book: Book, scenario: string, quantity: string): Copied {
  const { from, cell } = book.source(scenario, quantity)
  const typed = from === 'typed'
  if (cell !== null || !book.catalog().quantities.get(quantity)?.formula) return { quantity, cell, typed }
  const outcome = book.outcome(scenario, quantity)
  if (!hasValue(outcome) || typeof outcome.value !== 'number') return { quantity, cell: null, typed }
  const entered = shownNumber(book, quantity, outcome.value)
  return { quantity, cell: { kind: 'value', entered, unit: book.unit(quantity), canonical: outcome.value }, typed }
}

/** A text that a spreadsheet would run as a formula goes behind an apostrophe. */
function harmless(text: string): string {
  return /^[=+\-@\t\r]/.test(text) ? `'${text}` : text
}

/** A field of tab-separated text, as RFC 4180 quotes those of comma-separated text. */
export function quoted(field: string): string {
  return /[\t\n\r"]/.test(field) ? `"${field.replaceAll('"', '""')}"` : field
}

function escaped(field: string): string {
  return field.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;')
}
