import { createEffect, createMemo, For, on, untrack } from 'solid-js'
import { useBook } from '../shell/book'
import { inSteps } from '../shell/inSteps'
import { usePlace } from '../shell/place'
import { cellName } from '../shell/selection'
import { ColumnProbe } from './ColumnProbe'
import { listenToClipboard } from './clipboard'
import { createDrawn, DrawnContext } from './drawn'
import { focusCell } from './focusCell'
import { GridParts } from './GridParts'
import { type GridKeys, onGridKey } from './onGridKey'
import { cellOf, isInOpen, onGridPress } from './onGridPointer'
import { openEditor } from './openEditor'
import { opened, openOver } from './opened'
import { WorksheetView } from './WorksheetView'

/** All worksheets of the notebook, one after another; keys and presses in their grids are read here. */
export function Worksheets(props: { onExplain: () => void }) {
  const book = useBook()
  const place = usePlace()
  const drawn = createDrawn(book)
  listenToClipboard(book)

  // Down to the selected cell at once, the rest one a frame: what waits for the engine must not hold the page.
  const sheets = inSteps(() => book.catalog().worksheets, 1, untrack(firstDrawn))
  function firstDrawn(): number {
    const here = book.selection.line()?.worksheet
    return (
      Math.max(
        0,
        book.catalog().worksheets.findIndex(({ id }) => id === here),
      ) + 1
    )
  }
  const isThere = createMemo(() => sheets().some(({ id }) => id === place().part))

  createEffect(
    on([place, isThere], ([{ page, part }, there]) => {
      if (page !== 'worksheets' || part === undefined || !there) return
      const row = book.rows().find(({ worksheet }) => worksheet === part)
      const scenario = book.scenarios()[book.selection.position().column] ?? book.baseline()
      if (row) book.selection.select(cellName(row.key, scenario))
      // In the frame that draws it: before, the whole page would be laid out for it alone.
      requestAnimationFrame(() => {
        document.getElementById(`worksheet-${part}`)?.scrollIntoView({ block: 'start' })
        focusCell(book)
      })
    }),
  )

  // One cell is a stop of the Tab key. What gets the focus is made one before that: on a cell that has it, it costs a layout.
  createEffect<HTMLElement | null>((before) => {
    book.lines()
    book.scenarios()
    const cell = book.selection.cell()
    const stop = cell ? document.getElementById(cellName(cell.row.key, cell.scenario)) : null
    if (before !== stop && before) before.tabIndex = -1
    if (stop && stop.tabIndex !== 0) stop.tabIndex = 0
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

  const keys: GridKeys = {
    openMenu() {
      const anchor = document.activeElement
      if (anchor instanceof HTMLElement) openOver({ what: 'cells', anchor })
    },
    explain: props.onExplain,
    find: () => openOver({ what: 'find' }),
  }

  /** The press after "select up to" reaches; any other closes what is open. */
  function onPress(event: PointerEvent): void {
    const reaching = opened()?.what === 'reach'
    if (reaching) openOver(null)
    onGridPress(book, event, reaching)
  }

  /** The menu of the selected cells, of the pressed one where it is none of them. */
  function onContextMenu(event: MouseEvent): void {
    const cell = cellOf(event)
    if (!(cell instanceof HTMLElement) || isInOpen(event)) return
    event.preventDefault()
    if (cell.getAttribute('aria-selected') !== 'true') book.selection.select(cell.id)
    focusCell(book)
    openOver({ what: 'cells', anchor: cell })
  }

  return (
    <DrawnContext.Provider value={drawn}>
      {/* biome-ignore lint/a11y/noStaticElementInteractions: the grids inside have the roles; one listener serves all cells */}
      <div
        class="worksheets"
        onKeyDown={(event) => {
          if (cellOf(event) || isFoldHere(event)) onGridKey(book, event, keys)
        }}
        onPointerDown={onPress}
        onContextMenu={onContextMenu}
        onMouseDown={(event) => {
          // The press must not move the focus away from the cell that it selects.
          if (cellOf(event) && !isInOpen(event)) {
            event.preventDefault()
            if (!book.selection.editing()) focusCell(book)
          }
        }}
        onDblClick={(event) => {
          if (cellOf(event) && !book.selection.editing()) openEditor(book)
        }}
      >
        <ColumnProbe />
        <For each={sheets()}>
          {(definition, index) => <WorksheetView definition={definition} number={index() + 1} />}
        </For>
        <GridParts />
      </div>
    </DrawnContext.Provider>
  )
}

/** Whether the focus is on the line of something folded; only there do the grid's keys work on its button. */
function isFoldHere({ target }: Event): boolean {
  return target instanceof Element && target.matches('.fold[aria-expanded=false][tabindex="0"]')
}
