import { Show } from 'solid-js'
import { toShown, toStored } from '../../notebook/formulaNames'
import { own } from '../../notebook/own'
import { addRow, changeRow } from '../../notebook/rowCommands'
import { convert } from '../../units/convert'
import { displayUnit } from '../../units/profile'
import { isProblem, type Problem, problem } from '../../words/problem'
import { say } from '../../words/say'
import { withChangedRow, withNewRow } from '../../worksheet/changedDefinition'
import type { Row } from '../../worksheet/definition'
import { countsIn } from '../countsIn'
import { focusCell } from '../grid/focusCell'
import type { GridRow } from '../grid/gridRow'
import { labelOf } from '../labelOf'
import { afterDrawing } from '../shell/afterDrawing'
import { announce } from '../shell/announce'
import type { Book } from '../shell/book'
import { useBook } from '../shell/book'
import { cellName } from '../shell/selection'
import { nameFault } from './nameFault'
import { changeOwnWorksheet, ownDefinition } from './ownDefinition'
import { RowDialog } from './RowDialog'
import { draftOf, EMPTY_DRAFT, formulaRowOf, lookOf, type RowDraft, spanOf } from './rowDraft'
import { tried } from './tried'

/** The form for a new row under the selected one, or for a row of the reader's own. */
export function RowEditor(props: { what: 'add' | 'change'; row: GridRow; onClose: () => void }) {
  const book = useBook()
  const { row: target } = props
  const { quantity } = target
  const mine = own(book.notebook().rows, quantity.own ?? '')
  const label = labelOf(quantity.name, quantity.row)
  const changed: Row = quantity.row
  const written = mine?.row.formula ?? ('formula' in changed ? changed.formula : '')
  const draft = props.what === 'add' ? EMPTY_DRAFT : draftOf(changed, label, toShown(written, book.notebook()))
  const kind = () => {
    if (props.what === 'add' || 'formula' in changed) return 'formula'
    return changed.input === 'choice' ? 'choice' : 'number'
  }

  async function keep(now: RowDraft): Promise<Problem | null> {
    const trouble = kind() === 'formula' ? await keepFormula(now) : await keepInput(now)
    if (trouble === null) {
      announce(say('rows.kept', { name: now.label || now.name }))
      afterDrawing(() => goTo(book, target.worksheet, now.name.trim()))
    }
    return trouble
  }

  async function keepFormula(now: RowDraft): Promise<Problem | null> {
    const stored = toStored(now.formula, book.notebook())
    if (isProblem(stored)) return stored
    const content = formulaRowOf(now, stored)
    if (isProblem(content)) return content
    const definition = ownDefinition(book.notebook(), target.worksheet)
    if (!definition || mine) {
      const edit = mine
        ? changeRow(book.notebook(), mine.id, content)
        : addRow(book.notebook(), target.worksheet, quantity.name, content)
      return isProblem(edit) ? edit : ((await tried(book, edit, content.name)) ?? book.dispatch(edit))
    }
    const { range, ...rest } = content
    const row: Row = range ? { ...rest, range: [range[0], range[1]] } : rest
    if (props.what === 'add') {
      if (book.catalog().quantities.has(row.name)) return problem('row_name_taken', [], { name: row.name })
      return changeOwnWorksheet(book, withNewRow(definition, quantity.name, row), row.name)
    }
    // Checks, refusals and bands of a copied row stay as they are; what the form leaves empty goes.
    const {
      label: _l,
      decimals: _d,
      range: _r,
      units_as_said: _u,
      ...kept
    } = changed as Extract<Row, { formula: string }>
    return changeOwnWorksheet(book, withChangedRow(definition, quantity.name, { ...kept, ...row }), quantity.name)
  }

  /** Of an input of one's own worksheet: its label, unit, what it accepts, its range. */
  async function keepInput(now: RowDraft): Promise<Problem | null> {
    const definition = ownDefinition(book.notebook(), target.worksheet)
    const look = lookOf(now)
    if (isProblem(look)) return look
    if (!definition || 'formula' in changed) return problem('row_gone')
    if (changed.input === 'choice') {
      const row: Row = { ...changed, label: look.label }
      return changeOwnWorksheet(book, withChangedRow(definition, quantity.name, row), quantity.name)
    }
    const accept = spanOf(now.acceptFrom, now.acceptTo)
    if (isProblem(accept)) return accept
    if (!accept) return problem('rows_number', [], { found: '' })
    const { range: _r, decimals: _d, ...kept } = changed
    const row: Row = {
      ...kept,
      label: look.label || quantity.name,
      unit: look.unit,
      accept: [accept[0], accept[1]],
      ...(look.decimals !== undefined && { decimals: look.decimals }),
      ...(look.range && { range: [look.range[0], look.range[1]] }),
    }
    return changeOwnWorksheet(book, withChangedRow(definition, quantity.name, row), quantity.name)
  }

  /** A unit that is chosen for the row alone stays with it while it can be converted; else the reader's profile decides. */
  function counts({ unit }: RowDraft): string {
    const written = unit.trim() || '1'
    const chosen = props.what === 'change' ? own(book.notebook().units, quantity.name) : undefined
    const isOfKind = chosen !== undefined && !isProblem(convert(1, written, chosen))
    return countsIn(written, isOfKind ? chosen : displayUnit(written, book.notebook().profile))
  }

  const inOwnWorksheet = () => !mine && ownDefinition(book.notebook(), target.worksheet) !== null
  return (
    <Show when={book.writable()}>
      <RowDialog
        title={say(props.what === 'add' ? 'rows.add' : 'rows.change', { name: label })}
        draft={draft}
        kind={kind()}
        nameStays={props.what === 'change' && inOwnWorksheet()}
        counts={counts}
        nameFault={(now) => nameFault(now, book.catalog(), props.what === 'change' ? quantity.name : undefined)}
        onKeep={keep}
        onClose={() => {
          props.onClose()
          focusCell(book)
        }}
      />
    </Show>
  )
}

function goTo(book: Book, worksheet: string, name: string): void {
  const row = book.rows().find(({ quantity, worksheet: at }) => quantity.name === name && at === worksheet)
  const scenario = book.selection.cell()?.scenario ?? book.baseline()
  if (row) book.selection.select(cellName(row.key, scenario))
  focusCell(book)
}
