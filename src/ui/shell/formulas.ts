import type { FormulaCheck } from '../../notebook/checkCell'
import type { Edit } from '../../notebook/edit'
import type { Notebook } from '../../notebook/notebook'
import { type Problem, problem } from '../../words/problem'
import type { Outline } from '../../worksheet/catalog'

/** What the page does with formulas that people write. */
export interface Formulas {
  readonly check: FormulaCheck
  /** why an edit, with which the document is `after`, would have a formula wait for its own answer; null when it does not */
  circle(after: Notebook, catalog: Outline, edit: Edit): Problem | null
  toStored(text: string, notebook: Notebook): string | Problem
  toShown(stored: string, notebook: Notebook): string
}

let fetched: Formulas | null = null

/** Fetches the formulas' parser and the functions that they may call; most visits type no formula. */
export async function prepareFormulas(): Promise<void> {
  if (fetched) return
  try {
    const [{ checkFormula }, { checkCircle }, { toStored, toShown }] = await Promise.all([
      import('../../notebook/checkFormula'),
      import('../../notebook/checkCircle'),
      import('../../notebook/formulaNames'),
    ])
    fetched = { check: checkFormula, circle: checkCircle, toStored, toShown }
  } catch {
    // Not to be had now: a formula stays refused with a sentence, and the next one asks again.
  }
}

/** Null until `prepareFormulas` is done: a formula is then refused with `ON_THEIR_WAY`. */
export function formulas(): Formulas | null {
  return fetched
}

export const ON_THEIR_WAY = problem('formulas_on_their_way')
