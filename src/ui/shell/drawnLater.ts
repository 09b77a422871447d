import { type Accessor, createComputed, createSignal, on, onCleanup, untrack } from 'solid-js'
import { afterDrawing } from './afterDrawing'

/** The same value, a moment later: once the browser has drawn what changed with it. Of values in between the last alone is followed. */
export function drawnLater<T>(now: Accessor<T>): Accessor<T> {
  const [later, setLater] = createSignal<T>(untrack(now))
  let waiting = false
  let gone = false
  onCleanup(() => {
    gone = true
  })
  createComputed(
    on(
      now,
      () => {
        if (waiting) return
        waiting = true
        afterDrawing(() => {
          waiting = false
          if (!gone) setLater(() => untrack(now))
        })
      },
      { defer: true },
    ),
  )
  return later
}
