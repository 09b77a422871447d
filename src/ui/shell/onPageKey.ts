import { setArriving } from '../desk/resume'
import { focusCell } from '../grid/focusCell'
import { openOver } from '../grid/opened'
import { afterDrawing } from './afterDrawing'
import type { Book } from './book'
import { goTo, type Place } from './place'

const REGIONS = ['.rail a', '.toolbar button:not(:disabled)', 'grid', '#margin'] as const

/**
 * Keys that work anywhere on the page: undo, redo, find, F6 from region to region, F8 and F9 to the desk and the customer's
 * sheet.
 */
export function onPageKey(book: Book, event: KeyboardEvent): void {
  if (event.defaultPrevented) return
  const ctrl = event.ctrlKey || event.metaKey
  const { target } = event
  // One that was left by this very key is not on the page any more.
  const inText = target instanceof HTMLInputElement && target.type !== 'radio' && target.isConnected
  if (ctrl && !inText && !event.altKey) {
    const key = event.key.toLowerCase()
    if (key === 'z' && !event.shiftKey) book.undo()
    else if (key === 'y' || (key === 'z' && event.shiftKey)) book.redo()
    else if (key === 'f' && !event.shiftKey && hasGrid()) openOver({ what: 'find' })
    else return
    event.preventDefault()
  } else if (event.key === 'F8' || event.key === 'F9') {
    event.preventDefault()
    turnTo(book, event.key === 'F8' ? 'desk' : 'handout')
  } else if (event.key === 'F6') {
    event.preventDefault()
    nextRegion(book, event.shiftKey ? -1 : 1)
  }
}

/** The customer's sheet was printed and is still open: this customer is served. */
let printed = false
addEventListener('afterprint', () => {
  printed = location.hash.startsWith('#handout')
})
addEventListener('hashchange', () => {
  printed = false
})

/** To a page; from there back to the worksheets, or from the customer's sheet to the desk. */
function turnTo(book: Book, page: Place['page']): void {
  const isHere = location.hash.startsWith(`#${page}`)
  // at the desk the next customer's name is asked, not the last field of the bottle that is finished
  if (page === 'desk' && printed) setArriving('pool')
  if (!isHere) goTo({ page })
  else if (page === 'handout') goTo({ page: 'desk' })
  else {
    addEventListener('hashchange', () => afterDrawing(() => focusCell(book)), { once: true })
    goTo({ page: 'worksheets' })
  }
}

function nextRegion(book: Book, by: 1 | -1): void {
  const here = document.activeElement
  const at = ['.rail', '.toolbar', '.worksheets', '.margin'].findIndex((region) => here?.closest(region))
  for (let step = 1; step <= REGIONS.length; step++) {
    const region = REGIONS[(at + by * step + REGIONS.length * 2) % REGIONS.length]
    if (region === 'grid') {
      focusCell(book)
      return
    }
    const element = region ? document.querySelector<HTMLElement>(region) : null
    if (!element?.checkVisibility({ visibilityProperty: true })) continue
    element.focus()
    return
  }
}

function hasGrid(): boolean {
  return document.querySelector('.worksheets') !== null
}
