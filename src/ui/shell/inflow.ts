import { batch } from 'solid-js'

/** How long the page may be held before it is let breathe, in milliseconds; and how many of many changes are written between two looks at the clock. */
const LONGEST = 12
const STEP = 25

export interface Inflow<T> {
  put(changes: readonly T[]): void
}

/**
 * Writes changes in the order in which they came, a little at a time: an edit of the baseline can change thousands of
 * cells, and typing must not wait for all of them. The first slice is written at once.
 * @param yielded how a later slice is waited for; the browser may draw and hear keys before it comes
 * @param atOnce so few changes are written in one go
 */
export function createInflow<T>(
  write: (change: T) => void,
  yielded: (next: () => void) => void = yieldToPage,
  atOnce = 100,
): Inflow<T> {
  const waiting: T[] = []
  let at = 0
  let running = false

  function slice(): void {
    const until = performance.now() + LONGEST
    do {
      const left = waiting.length - at
      const end = at + (left <= atOnce ? left : Math.min(STEP, atOnce))
      batch(() => {
        for (; at < end; at++) write(waiting[at] as T)
      })
    } while (at < waiting.length && performance.now() < until)
    if (at < waiting.length) {
      yielded(slice)
      return
    }
    waiting.length = 0
    at = 0
    running = false
  }

  return {
    put(changes) {
      for (const change of changes) waiting.push(change)
      if (running || waiting.length === 0) return
      running = true
      slice()
    },
  }
}

/** A message to itself: unlike a timer it is not held back by the browser. */
export function yieldToPage(next: () => void): void {
  const { port1, port2 } = new MessageChannel()
  port1.onmessage = () => {
    port1.close()
    next()
  }
  port2.postMessage(null)
}
