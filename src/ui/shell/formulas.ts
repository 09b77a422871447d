import type { FormulaCheck } from '../../notebook/checkCell'
import type { Notebook } from '../../notebook/notebook'
import { type Problem, problem } from '../../words/problem'

/** What the page does with formulas that people write. */
export interface Formulas {
  readonly check: FormulaCheck
  toStored(text: string, notebook: Notebook): string | Problem
  toShown(stored: string, notebook: Notebook): string
}

let fetched: Formulas | null = null

/** Fetches the formulas' parser and the functions that they may call; most visits type no formula. */
export async function prepareFormulas(): Promise<void> {
  if (fetched) return
  try {
    const [{ checkFormula }, { toStored, toShown }] = await Promise.all([
      import('../../notebook/checkFormula'),
      import('../../notebook/formulaNames'),
    ])
    fetched = { check: checkFormula, toStored, toShown }
  } catch {
    // Not to be had now: a formula stays refused with a sentence, and the next one asks again.
  }
}

/** Null until `prepareFormulas` is done: a formula is then refused with `ON_THEIR_WAY`. */
export function formulas(): Formulas | null {
  return fetched
}

export const ON_THEIR_WAY = problem('formulas_on_their_way')
