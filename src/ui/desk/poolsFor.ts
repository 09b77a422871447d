import type { Finder } from '../../storage/finder'
import { folded } from '../../storage/folded'
import type { Entry } from '../../storage/records'

/** How many pools are offered for what was typed. */
const MOST = 6

type Named = Pick<Entry, 'name' | 'place'>

/** The pools to choose from, and which choice Enter takes: one place after the last of them is a new pool. */
export interface PoolsFor<E> {
  readonly found: readonly E[]
  readonly taken: number
}

/**
 * Enter opens a pool only where it was called by its name: a new customer's Smyth is no Smith, and a word of a note names
 * nobody. Others that are like what was typed are listed, to be chosen by hand.
 */
export function poolsFor<E extends Named>(typed: string, entries: readonly E[], finder: Finder): PoolsFor<E> {
  const sought = folded(typed)
  if (sought === '') return { found: [], taken: 0 }
  const like = [...finder.find(typed)].flatMap((row) => entries[row] ?? [])
  const called = like.filter((entry) => isCalled(entry, sought))
  const found = [...called, ...like.filter((entry) => !called.includes(entry)).slice(0, MOST)].slice(0, MOST)
  return { found, taken: called.length > 0 ? 0 : found.length }
}

/** Whether a name or a place, or a word in them, begins so. */
function isCalled({ name, place }: Named, sought: string): boolean {
  return [name, place].some((text) => {
    const whole = folded(text)
    for (let at = whole.indexOf(sought); at !== -1; at = whole.indexOf(sought, at + 1))
      if (at === 0 || /[^\p{L}\p{N}]/u.test(whole.charAt(at - 1))) return true
    return false
  })
}
