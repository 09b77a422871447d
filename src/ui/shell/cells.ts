import { createSignal, type Signal } from 'solid-js'

/** One signal a cell, made when the cell is first read: a change redraws the cells that changed and no others. */
export interface Cells<T> {
  /** tracked */
  read(key: string): T | undefined
  write(key: string, value: T): void
  clear(): void
}

export function createCells<T>(): Cells<T> {
  const signals = new Map<string, Signal<T | undefined>>()

  function signalOf(key: string): Signal<T | undefined> {
    let signal = signals.get(key)
    if (!signal) {
      signal = createSignal<T | undefined>(undefined, { equals: false })
      signals.set(key, signal)
    }
    return signal
  }

  return {
    read: (key) => signalOf(key)[0](),
    write(key, value) {
      signalOf(key)[1](() => value)
    },
    clear() {
      for (const [, set] of signals.values()) set(undefined)
    },
  }
}
