import { createSignal } from 'solid-js'
import { type Draft, keepDraft, keptDraft } from './draft'

/** Where the work goes on when the page of the desk opens next: set by what opens another notebook. */
const [arriving, setArriving] = createSignal<string | null>(null)

export { arriving, setArriving }

/** The place in one notebook's form, kept as one goes, so that a closed page opens where it was left. */
export interface Place {
  /** what was there when the page opened; null where nothing was, or it was taken up */
  readonly left: () => Draft | null
  /** the field that has the focus, and what is typed in it but not taken yet */
  at(field: string, text?: string): void
  /** what was left is taken or dropped */
  takenUp(): void
}

export function createPlace(notebook: string): Place {
  const [left, setLeft] = createSignal(keptDraft(notebook))
  return {
    left,
    at(field, text = '') {
      keepDraft({ notebook, field, text })
    },
    takenUp: () => setLeft(null),
  }
}
