import { pastedTable } from '../../intake/pastedTable'
import { LIMITS } from '../../notebook/limits'
import { pasteWords } from '../../words/en/paste'
import { addWords, say, sentence } from '../../words/say'
import type { OutlineQuantity } from '../../worksheet/catalog'
import { announce } from '../shell/announce'
import type { Book } from '../shell/book'
import { formulas, ON_THEIR_WAY, prepareFormulas } from '../shell/formulas'
import { type Copied, fieldOf } from './copyBlock'
import { focusCell } from './focusCell'
import { isRow } from './line'
import { openOver } from './opened'
import { hasOurHeadings, placeByName } from './placeByName'
import { type Field, planPaste, planPlaced } from './planPaste'
import { rangeOf } from './range'
import { sayPasted } from './sayPasted'
import { spread } from './spread'

addWords(pasteWords)

/**
 * Pastes from the first selected cell on, as one step; one field, or a block that fits it several times, fills the range. A table with our
 * own headings goes by its names and units, whichever cell is selected.
 * @param text null: the browser does not give it
 * @param ours the cells that this notebook put on the clipboard, while they are what it has
 */
export async function paste(
  book: Book,
  text: string | null,
  ours: readonly (readonly Copied[])[] | null,
): Promise<void> {
  const { selection } = book
  if (!book.writable()) {
    announce(say('page.read_only_short'))
    return
  }
  if (text === null || (text === '' && !ours)) {
    announce(say(text === null ? 'page.paste.blocked' : 'page.paste.no_words'))
    return
  }
  const table = pastedTable(text)
  const isNamed = hasOurHeadings(table)
  const block = selection.block()
  const fields: readonly (readonly Field[])[] = isNamed
    ? table.slice(1)
    : spread<Field>(ours ?? table, { rows: block.rows.length, columns: block.scenarios.length })
  const count = fields.reduce((sum, line) => sum + line.length, 0)
  if (count > LIMITS.together) {
    announce(say('page.paste.too_large', { count, most: LIMITS.together }))
    return
  }
  if ((isNamed && ours ? ours : fields).some((line) => line.some(isFormula))) await prepareFormulas()
  const { edit, report } = isNamed ? planNamed(book, table, ours) : planAt(book, fields)
  const trouble = edit && book.dispatch(edit)
  if (trouble) {
    // Each could be taken by itself, and not all together: nothing was.
    announce(sentence(trouble))
    openOver({ what: 'report', report: { ...report, taken: 0, whole: trouble } })
    return
  }
  if (!isNamed) selectPasted(book, fields)
  focusCell(book)
  announce(sayPasted(report).join(' '))
  const isWhole = report.locked + report.beyond + report.refused.length + (report.strangers?.fields ?? 0) === 0
  openOver(isWhole ? null : { what: 'report', report })
}

function about(book: Book) {
  return {
    notebook: book.notebook(),
    catalog: book.catalog(),
    unit: book.unit,
    check: formulas()?.check ?? (() => ON_THEIR_WAY),
  }
}

function planNamed(book: Book, table: readonly (readonly string[])[], ours: readonly (readonly Copied[])[] | null) {
  const scope = {
    ...about(book),
    rows: book.rows().map(({ quantity }) => quantity),
    stands: (scenario: string, row: OutlineQuantity) => fieldOf(book, scenario, row),
  }
  const { places, same, strangers } = placeByName(table, ours, scope)
  const { edit, report } = planPlaced(places, scope)
  return { edit, report: { ...report, same, strangers } }
}

function planAt(book: Book, fields: readonly (readonly Field[])[]) {
  const { top, left } = rangeNow(book)
  const rows = rowsFrom(book, top).map(({ quantity }) => quantity)
  return planPaste(fields, { ...about(book), rows, scenarios: book.scenarios().slice(left) })
}

/** What was pasted stays selected. */
function selectPasted(book: Book, fields: readonly (readonly Field[])[]): void {
  const { top, left } = rangeNow(book)
  const rows = rowsFrom(book, top)
  const lastRow = rows[Math.min(fields.length, rows.length) - 1]
  const row = lastRow ? book.lines().indexOf(lastRow) : top
  const widest = Math.max(1, ...fields.map((line) => line.length))
  const column = Math.min(left + widest, book.scenarios().length) - 1
  book.selection.selectRange({ row: top, column: left }, { row, column })
}

function rangeNow({ selection }: Book) {
  return selection.range() ?? rangeOf(selection.position(), selection.position())
}

function rowsFrom(book: Book, top: number) {
  return book.lines().slice(top).filter(isRow)
}

function isFormula(field: Field): boolean {
  return typeof field === 'string' ? field.trimStart().startsWith('=') : field.cell?.kind === 'formula'
}
