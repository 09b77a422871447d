import { type Accessor, createEffect, createMemo, createSignal, on, onCleanup, untrack } from 'solid-js'
import { afterDrawing } from './afterDrawing'

/**
 * A list that grows by so many items a frame: what comes new is drawn piece by piece, and the page answers in between. Items are
 * told apart by themselves; what there is no more goes at once.
 * @param first how many are there from the beginning; all, where nothing is said
 */
export function inSteps<T>(
  all: Accessor<readonly T[]>,
  step: number,
  first = Number.POSITIVE_INFINITY,
): Accessor<readonly T[]> {
  const [seen, setSeen] = createSignal<ReadonlySet<T>>(new Set(untrack(all).slice(0, first)))
  let turn = 0
  onCleanup(() => turn++)
  createEffect(
    on(all, (items, before) => {
      const mine = ++turn
      const more = () => {
        if (mine !== turn) return
        const lacking = items.filter((item) => !seen().has(item))
        if (lacking.length === 0) return
        setSeen(new Set([...items.filter((item) => seen().has(item)), ...lacking.slice(0, step)]))
        afterDrawing(more)
      }
      // What is there from the beginning is drawn by itself.
      if (before === undefined && first > 0) afterDrawing(more)
      else untrack(more)
    }),
  )
  return createMemo(() => all().filter((item) => seen().has(item)))
}
