import { type Accessor, createSignal } from 'solid-js'

/** A value that is right at once for whoever asks, while what is drawn from it follows when it is shown. */
export interface Held<T> {
  /** tracked */
  readonly read: Accessor<T>
  set(value: T): void
  show(): void
}

export function createHeld<T>(first: T): Held<T> {
  const [shown, setShown] = createSignal<undefined>(undefined, { equals: false })
  let now = first
  let isShown = true
  return {
    read() {
      shown()
      return now
    },
    set(value) {
      if (value === now) return
      now = value
      isShown = false
    },
    show() {
      if (isShown) return
      isShown = true
      setShown(undefined)
    },
  }
}
