import type { Applied } from './applied'
import type { Edit } from './edit'

/** One step back: the edit, and what takes it back. */
export interface Step {
  readonly edit: Edit
  readonly inverse: Edit
}

/** What a tab can take back and do again. It belongs to the tab and ends with it. */
export interface History {
  /** the last step last */
  readonly past: readonly Step[]
  /** the next to be done again last */
  readonly future: readonly Step[]
}

/** Steps that are kept; the oldest fall away first. */
const MOST_STEPS = 500

export function createHistory(): History {
  return { past: [], future: [] }
}

/** The history after an edit was applied. What had been taken back before it cannot be done again. */
export function remember(history: History, edit: Edit, { inverse, history: entering }: Applied): History {
  if (entering === 'none') return history
  const last = history.past.at(-1)
  if (entering === 'join' && last !== undefined && history.future.length === 0 && sameText(last.edit, edit))
    return { past: [...history.past.slice(0, -1), { edit, inverse: last.inverse }], future: [] }
  return { past: [...history.past, { edit, inverse }].slice(-MOST_STEPS), future: [] }
}

/** The edit that takes the last step back, and the history once it is applied; null when there is nothing to take back. */
export function undo(history: History): { readonly edit: Edit; readonly history: History } | null {
  const step = history.past.at(-1)
  if (step === undefined) return null
  return { edit: step.inverse, history: { past: history.past.slice(0, -1), future: [...history.future, step] } }
}

/** The edit that does the last step taken back again, and the history once it is applied; null when there is none. */
export function redo(history: History): { readonly edit: Edit; readonly history: History } | null {
  const step = history.future.at(-1)
  if (step === undefined) return null
  return { edit: step.edit, history: { past: [...history.past, step], future: history.future.slice(0, -1) } }
}

/** Whether both set the very same text, so that the later one alone tells where the two lead. */
function sameText(a: Edit, b: Edit): boolean {
  if (a.type === 'change_notebook') return b.type === 'change_notebook' && sameKeys(a.set, b.set)
  if (a.type === 'change_scenario')
    return b.type === 'change_scenario' && a.scenario === b.scenario && sameKeys(a.set, b.set)
  return false
}

function sameKeys(a: object, b: object): boolean {
  const keys = Object.keys(a)
  return keys.length === Object.keys(b).length && keys.every((key) => key in b)
}
