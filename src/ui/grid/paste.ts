import { pastedTable } from '../../intake/pastedTable'
import { LIMITS } from '../../notebook/limits'
import { pasteWords } from '../../words/en/paste'
import { addWords, say, sentence } from '../../words/say'
import { announce } from '../shell/announce'
import type { Book } from '../shell/book'
import { formulas, ON_THEIR_WAY, prepareFormulas } from '../shell/formulas'
import type { Copied } from './copyBlock'
import { focusCell } from './focusCell'
import { isRow } from './line'
import { openOver } from './opened'
import { type Field, planPaste } from './planPaste'
import { rangeOf } from './range'
import { sayPasted } from './sayPasted'
import { spread } from './spread'

addWords(pasteWords)

/**
 * Pastes from the first selected cell on, as one step; one field, or a block that fits it several times, fills the range.
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
  const range = selection.range() ?? rangeOf(selection.position(), selection.position())
  const block = selection.block()
  const fields: readonly (readonly Field[])[] = spread<Field>(ours ?? pastedTable(text), {
    rows: block.rows.length,
    columns: block.scenarios.length,
  })
  const count = fields.reduce((sum, line) => sum + line.length, 0)
  if (count > LIMITS.together) {
    announce(say('page.paste.too_large', { count, most: LIMITS.together }))
    return
  }
  if (fields.some((line) => line.some(isFormula))) await prepareFormulas()
  const rows = book.lines().slice(range.top).filter(isRow)
  const { edit, report } = planPaste(fields, {
    notebook: book.notebook(),
    catalog: book.catalog(),
    rows: rows.map(({ quantity }) => quantity),
    scenarios: book.scenarios().slice(range.left),
    unit: book.unit,
    check: formulas()?.check ?? (() => ON_THEIR_WAY),
  })
  const trouble = edit && book.dispatch(edit)
  if (trouble) {
    // Each could be taken by itself, and not all together: nothing was.
    announce(sentence(trouble))
    openOver({ what: 'report', report: { ...report, taken: 0, whole: trouble } })
    return
  }
  const lastRow = rows[Math.min(fields.length, rows.length) - 1]
  const row = lastRow ? book.lines().indexOf(lastRow) : range.top
  const widest = Math.max(1, ...fields.map((line) => line.length))
  const column = Math.min(range.left + widest, book.scenarios().length) - 1
  selection.selectRange({ row: range.top, column: range.left }, { row, column })
  focusCell(book)
  announce(sayPasted(report).join(' '))
  const isWhole = report.locked + report.beyond + report.refused.length === 0
  openOver(isWhole ? null : { what: 'report', report })
}

function isFormula(field: Field): boolean {
  return typeof field === 'string' ? field.trimStart().startsWith('=') : field.cell?.kind === 'formula'
}
