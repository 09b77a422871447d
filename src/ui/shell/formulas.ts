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

/** Until `prepareFormulas` is done, a formula is refused for a moment; a notebook that has any is opened after it. */
export function formulas(): Formulas {
  return fetched ?? WAITING
}

const WAITING: Formulas = {
  check: () => problem('formulas_on_their_way'),
  toStored: () => problem('formulas_on_their_way'),
  toShown: (stored) => stored,
}

export function hasFormulas({ cells }: Notebook): boolean {
  return Object.values(cells).some(({ kind }) => kind === 'formula')
}
