import { type Accessor, createEffect, createMemo, createSignal, on, onCleanup, untrack } from 'solid-js'
import { afterDrawing } from '../shell/afterDrawing'

/**
 * A list that grows by so many items a frame: what comes new is drawn piece by piece, and the page answers in between. Items are
 * told apart by themselves; what there is no more goes at once. `begun`: what is there at first is drawn at once.
 */
export function inSteps<T>(all: Accessor<readonly T[]>, step: number, begun = true): Accessor<readonly T[]> {
  const [seen, setSeen] = createSignal<ReadonlySet<T>>(new Set(begun ? untrack(all) : []))
  let turn = 0
  onCleanup(() => turn++)
  createEffect(
    on(all, (items) => {
      const mine = ++turn
      const more = () => {
        if (mine !== turn) return
        const lacking = items.filter((item) => !seen().has(item))
        if (lacking.length === 0) return
        setSeen(new Set([...items.filter((item) => seen().has(item)), ...lacking.slice(0, step)]))
        afterDrawing(more)
      }
      untrack(more)
    }),
  )
  return createMemo(() => all().filter((item) => seen().has(item)))
}
