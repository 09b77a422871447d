import { createSignal, getListener, type Signal } from 'solid-js'

/**
 * One signal a cell, made when the cell is first read where it is drawn: a change redraws the cells that changed and no
 * others, and what nothing shows costs nothing.
 */
export interface Cells<T> {
  /** tracked */
  read(key: string): T | undefined
  write(key: string, value: T): void
  clear(): void
}

export function createCells<T>(): Cells<T> {
  const values = new Map<string, T>()
  const signals = new Map<string, Signal<undefined>>()

  function track(key: string): void {
    let signal = signals.get(key)
    if (!signal) {
      signal = createSignal<undefined>(undefined, { equals: false })
      signals.set(key, signal)
    }
    signal[0]()
  }

  return {
    read(key) {
      if (getListener()) track(key)
      return values.get(key)
    },
    write(key, value) {
      values.set(key, value)
      signals.get(key)?.[1](undefined)
    },
    clear() {
      values.clear()
      for (const [, set] of signals.values()) set(undefined)
    },
  }
}
