import { type Accessor, createComputed } from 'solid-js'
import { createCells } from './cells'

/**
 * Whether a key is the one that is picked; tracked. Only the old and the new one hear of a change: `createSelector`
 * compares the new one with every key that is asked for, and here thousands of cells ask.
 */
export function createPicked(source: Accessor<string>): (key: string) => boolean {
  const picked = createCells<boolean>()
  createComputed<string>((before) => {
    const now = source()
    if (now === before) return now
    picked.write(before, false)
    picked.write(now, true)
    return now
  }, '')
  return (key) => picked.read(key) === true
}
