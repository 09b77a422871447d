import { batch } from 'solid-js'
import type { Book } from '../shell/book'
import { commitEntry } from './commitEntry'
import { focusCell } from './focusCell'
import { leaveNow } from './leaving'
import { foldId, isRow } from './line'
import { move } from './move'
import { openEditor } from './openEditor'
import { opened, openOver } from './opened'
import { clearRange, fillRange } from './rangeActs'
import { sayRange } from './sayRange'
import { selectWhole, type Whole } from './selectWhole'
import { setFold } from './setFold'

const PAGE = 12

export interface GridKeys {
  /** opens the menu of the selected cells */
  readonly openMenu: () => void
  /** shows the margin where it is a drawer, and goes to it */
  readonly explain: () => void
  readonly find: () => void
}

/** Keys in the grid, whether a cell is being edited or not. */
export function onGridKey(book: Book, event: KeyboardEvent, keys: GridKeys): void {
  leaveNow()
  if (event.defaultPrevented || event.isComposing) return
  const handled = book.selection.editing() ? editKey(book, event) : cellKey(book, event, keys)
  if (handled) event.preventDefault()
}

function editKey(book: Book, event: KeyboardEvent): boolean {
  const input = event.target
  if (!(input instanceof HTMLInputElement)) return false
  const leave = (key: string, shift: boolean): boolean => {
    commitEntry(book, input.value, () =>
      batch(() => {
        book.selection.edit(null)
        go(book, { key, ctrl: false, shift })
      }),
    )
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
  const { key, shiftKey: shift } = event
  const ctrl = event.ctrlKey || event.metaKey
  if (event.altKey) return shift && !ctrl && foldKey(book, key)
  if (ctrl) return ctrlKey(book, key, shift, keys)
  if (!isRow(book.selection.line()) && (key === 'Enter' || key === ' ')) return false
  switch (key) {
    case 'Enter':
    case 'F2':
      openEditor(book)
      return true
    case 'Delete':
    case 'Backspace':
      clearRange(book)
      return true
    case 'Escape':
      if (opened()?.what === 'report' || opened()?.what === 'reach') {
        openOver(null)
        return true
      }
      if (!book.selection.range()) return false
      book.selection.selectAt(book.selection.position())
      focusCell(book)
      return true
    case ' ':
      return shift && whole(book, 'row')
    case 'ContextMenu':
      keys.openMenu()
      return true
    case 'F10':
      if (!shift) return false
      keys.openMenu()
      return true
    case '?':
      keys.explain()
      return true
    case '/':
      keys.find()
      return true
  }
  if (go(book, { key, ctrl, shift })) return true
  if (key.length !== 1) return false
  openEditor(book, key)
  return true
}

function ctrlKey(book: Book, key: string, shift: boolean, keys: GridKeys): boolean {
  switch (key.toLowerCase()) {
    case 'a':
      return !shift && whole(book, 'worksheet')
    case ' ':
      return !shift && whole(book, 'scenario')
    case 'r':
      if (shift) return false
      fillRange(book)
      return true
    case 'f':
      if (shift) return false
      keys.find()
      return true
    default:
      return go(book, { key, ctrl: true, shift })
  }
}

/** Up folds the group of the selected cell, then its worksheet; down opens what is folded here. */
function foldKey(book: Book, key: string): boolean {
  const line = book.selection.line()
  if (!line || (key !== 'ArrowUp' && key !== 'ArrowDown')) return false
  if (key === 'ArrowDown') {
    if (!isRow(line)) setFold(book, line.fold, false)
  } else setFold(book, isRow(line) ? foldId(line.worksheet, line.group) : foldId(line.worksheet), true)
  focusCell(book)
  return true
}

function whole(book: Book, what: Whole): boolean {
  selectWhole(book, what)
  sayRange(book)
  return true
}

/** @returns false when the key does not move, or when Tab leaves the grid. */
function go(book: Book, press: { key: string; ctrl: boolean; shift: boolean }): boolean {
  const { selection } = book
  const isExtending = press.shift && press.key !== 'Tab'
  const size = { rows: book.lines().length, columns: book.scenarios().length, page: PAGE }
  const to = move(isExtending ? selection.corner() : selection.position(), press, size)
  if (to === null || to === 'out') {
    if (to === 'out') focusCell(book)
    return false
  }
  if (isExtending) selection.extendTo(to)
  else selection.selectAt(to)
  focusCell(book)
  if (isExtending) sayRange(book)
  return true
}
