import { createEffect, For, on } from 'solid-js'
import { afterDrawing } from '../shell/afterDrawing'
import { useBook } from '../shell/book'
import { usePlace } from '../shell/place'
import { cellName, headName } from '../shell/selection'
import { commitEntry } from './commitEntry'
import { focusCell } from './focusCell'
import { onGridKey } from './onGridKey'
import { openEditor } from './openEditor'
import { WorksheetView } from './WorksheetView'

/** All worksheets of the notebook, one after another; keys and presses in their grids are read here. */
export function Worksheets(props: { onExplain: () => void }) {
  const book = useBook()
  const place = usePlace()

  createEffect(
    on(place, ({ page, part }) => {
      if (page !== 'worksheets' || part === undefined) return
      const row = book.rows().find(({ worksheet }) => worksheet === part)
      const scenario = book.selection.cell()?.scenario ?? book.baseline()
      if (row) book.selection.select(`${row.key}@${scenario}`)
      document.getElementById(`worksheet-${part}`)?.scrollIntoView({ block: 'start' })
      focusCell(book)
    }),
  )

  // One cell is a stop of the Tab key. Made one when all is drawn: on a cell that has the focus it costs a layout.
  createEffect<HTMLElement | null>((before) => {
    book.rows()
    book.scenarios()
    const cell = book.selection.cell()
    const stop = cell ? document.getElementById(cellName(cell.row.key, cell.scenario)) : null
    afterDrawing(() => {
      before?.setAttribute('tabindex', '-1')
      stop?.setAttribute('tabindex', '0')
    })
    return stop
  }, null)

  // A column that goes takes the focus with it: it falls to the cell that is selected then.
  createEffect(
    on(
      book.scenarios,
      () => {
        if (document.activeElement === document.body) focusCell(book)
      },
      { defer: true },
    ),
  )

  function openMenu(): void {
    const cell = book.selection.cell()
    if (cell) document.getElementById(headName(cell.row.worksheet, cell.scenario))?.click()
  }

  /** Enters what an open editor holds; the press waits when it cannot be entered. */
  function entered(event: Event): boolean {
    const editor = document.querySelector<HTMLInputElement>('.cell .editor input')
    if (!editor || commitEntry(book, editor.value)) return true
    event.preventDefault()
    editor.focus()
    return false
  }

  function onPointerDown(event: PointerEvent): void {
    const cell = cellOf(event)
    if (!cell || (event.target instanceof Element && event.target.closest('.editor, .choices'))) return
    if (!entered(event)) return
    const again = book.selection.isSelected(cell.id) && event.pointerType === 'touch'
    book.selection.select(cell.id)
    if (again) openEditor(book)
  }

  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: the grids inside have the roles; one listener serves all cells
    <div
      class="worksheets"
      onKeyDown={(event) => {
        if (cellOf(event)) onGridKey(book, event, { openMenu, explain: props.onExplain })
      }}
      onPointerDown={onPointerDown}
      onMouseDown={(event) => {
        // The press must not move the focus away from the cell that it selects.
        if (cellOf(event) && !(event.target as Element).closest('.editor, .choices')) {
          event.preventDefault()
          if (!book.selection.editing()) focusCell(book)
        }
      }}
      onDblClick={(event) => {
        if (cellOf(event) && !book.selection.editing()) openEditor(book)
      }}
    >
      <For each={book.catalog().worksheets}>
        {(definition, index) => <WorksheetView definition={definition} number={index() + 1} />}
      </For>
    </div>
  )
}

function cellOf(event: Event): Element | null {
  return event.target instanceof Element ? event.target.closest('.cell') : null
}
