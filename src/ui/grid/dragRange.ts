import type { Book } from '../shell/book'
import { sayRange } from './sayRange'
import { nearestIn, type Point, paceAt, type Sight } from './scrollOn'

/** Drawings after which it is taken that there is nothing more to scroll: rows that come into sight are drawn, and grow, later. */
const STILL = 30
/** A press moves by so many CSS pixels in any hand; and the cell under it moves too where it is brought into sight. */
const SLIP = 4

/**
 * The range follows the mouse until it is let go or taken back, and the page scrolls on while the mouse is past its edge,
 * also while it rests there.
 */
export function dragRange(book: Book, from: Point): void {
  const { selection } = book
  const start = selection.position()
  let at = from
  let isDrawn = false
  let dragged = false
  let frame = 0

  function reach(point: Point): void {
    const cell = document.elementFromPoint(point.x, point.y)?.closest('.cell')
    const to = cell ? selection.placeOf(cell.id) : undefined
    const { row, column } = selection.corner()
    if (!to || (to.row === row && to.column === column)) return
    dragged = true
    selection.extendTo(to)
  }

  /** A press at the page's edge that has not left its cell is a press, and no wish to scroll. */
  function isOnStart(): boolean {
    const cell = document.elementFromPoint(at.x, at.y)?.closest('.cell')
    const place = cell ? selection.placeOf(cell.id) : undefined
    return place?.row === start.row && place.column === start.column
  }

  function scrollOn(): void {
    let before = performance.now()
    let still = 0
    // a slow pace is less than a pixel a drawing, and what is less than a pixel is not scrolled
    let owed: Point = { x: 0, y: 0 }
    const step = (now: number) => {
      const page = document.getElementById('page')
      const pace = page && !isOnStart() ? paceAt(at, sightOf(page)) : null
      if (!page || !pace || (pace.x === 0 && pace.y === 0) || still > STILL) {
        frame = 0
        return
      }
      // after a pause of the browser it goes on from there; it does not make up for it
      const seconds = Math.min(now - before, 50) / 1000
      before = now
      const wanted = { x: owed.x + pace.x * seconds, y: owed.y + pace.y * seconds }
      const whole = { x: Math.trunc(wanted.x), y: Math.trunc(wanted.y) }
      owed = { x: wanted.x - whole.x, y: wanted.y - whole.y }
      const isStill = (whole.x !== 0 || whole.y !== 0) && !scroll(page, whole)
      still = isStill ? still + 1 : 0
      reach(nearestIn(at, sightOf(page)))
      frame = requestAnimationFrame(step)
    }
    frame = requestAnimationFrame(step)
  }

  function onMove({ clientX, clientY, buttons }: PointerEvent): void {
    // let go where nobody told us: over another window
    if (buttons === 0) {
      end()
      return
    }
    at = { x: clientX, y: clientY }
    if (!isDrawn && Math.hypot(at.x - from.x, at.y - from.y) < SLIP) return
    isDrawn = true
    reach(at)
    if (frame === 0) scrollOn()
  }

  /** The grid takes the range back on the same key; the mouse that is still held must not draw it anew. */
  function onKey({ key }: KeyboardEvent): void {
    if (key !== 'Escape') return
    dragged = false
    end()
  }

  function end(): void {
    cancelAnimationFrame(frame)
    removeEventListener('pointermove', onMove)
    removeEventListener('pointerup', end)
    removeEventListener('pointercancel', end)
    removeEventListener('keydown', onKey, true)
    if (dragged) sayRange(book)
  }

  addEventListener('pointermove', onMove)
  addEventListener('pointerup', end)
  addEventListener('pointercancel', end)
  addEventListener('keydown', onKey, true)
}

/** The page without what is stuck to its edges, as far as the window shows it. */
function sightOf(page: HTMLElement): Sight {
  const { left, top, right, bottom } = page.getBoundingClientRect()
  const { scrollPaddingLeft, scrollPaddingTop, scrollPaddingRight, scrollPaddingBottom } = getComputedStyle(page)
  return {
    left: Math.max(left, 0) + Number.parseFloat(scrollPaddingLeft),
    top: Math.max(top, 0) + Number.parseFloat(scrollPaddingTop),
    right: Math.min(right, innerWidth) - Number.parseFloat(scrollPaddingRight),
    bottom: Math.min(bottom, innerHeight) - Number.parseFloat(scrollPaddingBottom),
  }
}

/** @returns whether anything moved; in a low window it is the whole document that scrolls up and down */
function scroll(page: HTMLElement, { x, y }: Point): boolean {
  const before = [page.scrollLeft, page.scrollTop, scrollY]
  page.scrollBy(x, y)
  if (page.scrollTop === before[1]) scrollBy(0, y)
  return before.some((was, index) => was !== [page.scrollLeft, page.scrollTop, scrollY][index])
}
