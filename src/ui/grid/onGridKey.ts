import { batch } from 'solid-js'
import type { Book } from '../shell/book'
import { commitEntry } from './commitEntry'
import { focusCell } from './focusCell'
import { move } from './move'
import { openEditor } from './openEditor'

const PAGE = 12

export interface GridKeys {
  /** opens the menu of the selected scenario */
  readonly openMenu: () => void
  /** shows the margin where it is a drawer, and goes to it */
  readonly explain: () => void
}

/** Keys in the grid, whether a cell is being edited or not. */
export function onGridKey(book: Book, event: KeyboardEvent, keys: GridKeys): void {
  if (event.defaultPrevented || event.isComposing) return
  const handled = book.selection.editing() ? editKey(book, event) : cellKey(book, event, keys)
  if (handled) event.preventDefault()
}

function editKey(book: Book, event: KeyboardEvent): boolean {
  const input = event.target
  if (!(input instanceof HTMLInputElement)) return false
  // In one redraw, before which the focus moves: moved after it, it would have the whole page laid out then and there.
  const leave = (key: string, shift: boolean): boolean => {
    batch(() => {
      if (commitEntry(book, input.value)) go(book, { key, ctrl: false, shift })
    })
    return true
  }
  switch (event.key) {
    case 'Escape':
      batch(() => {
        book.selection.edit(null)
        focusCell(book)
      })
      return true
    case 'Enter':
      return leave(event.shiftKey ? 'ArrowUp' : 'ArrowDown', false)
    case 'Tab':
      return leave('Tab', event.shiftKey)
    case 'ArrowUp':
    case 'ArrowDown':
      return leave(event.key, false)
    case 'ArrowLeft':
    case 'ArrowRight':
      // A value that was just begun is left as in any grid; inside one that was opened the arrows move the caret.
      return book.selection.editing()?.fresh === true && !input.value.startsWith('=') ? leave(event.key, false) : false
    default:
      return false
  }
}

function cellKey(book: Book, event: KeyboardEvent, keys: GridKeys): boolean {
  const { key } = event
  const ctrl = event.ctrlKey || event.metaKey
  if (event.altKey) return false
  switch (key) {
    case 'Enter':
    case 'F2':
      if (ctrl) return false
      openEditor(book)
      return true
    case 'Delete':
    case 'Backspace':
      clear(book)
      return true
    case 'ContextMenu':
      keys.openMenu()
      return true
    case 'F10':
      if (!event.shiftKey) return false
      keys.openMenu()
      return true
    case '?':
      keys.explain()
      return true
  }
  if (go(book, { key, ctrl, shift: event.shiftKey })) return true
  if (ctrl || key.length !== 1 || key === ' ') return false
  openEditor(book, key)
  return true
}

/** @returns false when the key does not move, or when Tab leaves the grid. */
function go(book: Book, press: { key: string; ctrl: boolean; shift: boolean }): boolean {
  const size = { rows: book.rows().length, columns: book.scenarios().length, page: PAGE }
  const to = move(book.selection.position(), press, size)
  if (to === null || to === 'out') {
    if (to === 'out') focusCell(book)
    return false
  }
  book.selection.selectAt(to)
  focusCell(book)
  return true
}

/** Falls to the next source; on an input of the baseline that is "not taken". */
function clear(book: Book): void {
  const cell = book.selection.cell()
  if (!cell || !book.writable()) return
  book.dispatch({ type: 'set_cell', scenario: cell.scenario, quantity: cell.row.quantity.name, cell: null })
}
