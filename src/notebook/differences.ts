import type { Notebook } from './notebook'

/** What is other in one part of a notebook: the keys of a record that came, went or changed; of a text, that it did. */
export interface Difference {
  readonly part: keyof Notebook
  readonly how: 'added' | 'removed' | 'changed'
  /** empty for a part that is no record */
  readonly keys: readonly string[]
}

/** What is said of a notebook as a file, and changes with no edit. */
const NOT_CONTENT: ReadonlySet<string> = new Set(['format', 'version', 'id', 'computedWith'])

/** How one state of a notebook differs from an earlier one, part by part; whatever parts a notebook has. */
export function differences(before: Notebook, after: Notebook): readonly Difference[] {
  const parts = (Object.keys(after) as (keyof Notebook)[]).filter((part) => !NOT_CONTENT.has(part))
  return parts.flatMap((part) => {
    const [was, is] = [before[part], after[part]]
    if (was === is) return []
    if (typeof was === 'object' && typeof is === 'object' && was !== null && is !== null && !Array.isArray(is))
      return inRecord(part, was as Record<string, unknown>, is as Record<string, unknown>)
    return alike(was, is) ? [] : [{ part, how: 'changed', keys: [] } as const]
  })
}

function inRecord(
  part: keyof Notebook,
  was: Readonly<Record<string, unknown>>,
  is: Readonly<Record<string, unknown>>,
): readonly Difference[] {
  const found = {
    added: Object.keys(is).filter((key) => !Object.hasOwn(was, key)),
    removed: Object.keys(was).filter((key) => !Object.hasOwn(is, key)),
    changed: Object.keys(is).filter((key) => Object.hasOwn(was, key) && !alike(was[key], is[key])),
  }
  return (['added', 'removed', 'changed'] as const).flatMap((how) =>
    found[how].length > 0 ? [{ part, how, keys: found[how] }] : [],
  )
}

/** Whether two values are the same data, in whatever order their keys stand. */
function alike(a: unknown, b: unknown): boolean {
  if (a === b) return true
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false
  const [one, two] = [Object.entries(a), b as Record<string, unknown>]
  return (
    one.length === Object.keys(two).length &&
    one.every(([key, value]) => Object.hasOwn(two, key) && alike(value, two[key]))
  )
}
