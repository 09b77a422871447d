import { generateKeyBetween } from 'fractional-indexing'
import type { Notebook, Scenario } from './notebook'

const known = new WeakMap<Notebook['scenarios'], readonly Scenario[]>()

/** The scenarios as they stand side by side; the first is the baseline. Asked for the same document again, it is the same array. */
export function inOrder(notebook: Pick<Notebook, 'scenarios'>): readonly Scenario[] {
  const before = known.get(notebook.scenarios)
  if (before !== undefined) return before
  const sorted = Object.values(notebook.scenarios).sort(byOrder)
  known.set(notebook.scenarios, sorted)
  return sorted
}

/**
 * The scenario that the others follow.
 * @throws RangeError when there is none: neither an edit nor a file can bring that about.
 */
export function baselineOf(notebook: Notebook): Scenario {
  const [first] = inOrder(notebook)
  if (first === undefined) throw new RangeError('a notebook has at least one scenario')
  return first
}

/** Whether the library can put a key before and after this one. */
export function isOrderKey(key: string): boolean {
  try {
    generateKeyBetween(key, null)
    generateKeyBetween(null, key)
    return true
  } catch {
    return false
  }
}

/** Keys compare by code unit, never by locale. */
function byOrder(a: Scenario, b: Scenario): number {
  if (a.order === b.order) return a.id < b.id ? -1 : 1
  return a.order < b.order ? -1 : 1
}
