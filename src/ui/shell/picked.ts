import { type Accessor, createComputed } from 'solid-js'
import { createCells } from './cells'

/**
 * Whether a key is among those that are picked; tracked. Only keys that come or go hear of a change: `createSelector`
 * compares the new one with every key that is asked for, and here thousands of cells ask.
 */
export function createPicked(source: Accessor<readonly string[]>): (key: string) => boolean {
  const picked = createCells<boolean>()
  createComputed<ReadonlySet<string>>((before) => {
    const now = new Set(source())
    for (const key of before) if (!now.has(key)) picked.write(key, false)
    for (const key of now) if (!before.has(key)) picked.write(key, true)
    return now
  }, new Set())
  return (key) => picked.read(key) === true
}
