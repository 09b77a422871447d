import type { Applied } from '../../src/notebook/applied'
import { apply } from '../../src/notebook/apply'
import type { Edit } from '../../src/notebook/edit'
import type { Cell, Notebook, Reading, Sample } from '../../src/notebook/notebook'
import { isProblem } from '../../src/words/problem'
import { sentence } from '../../src/words/say'

/** The ids in the tests are words, so that a failing one can be read. */
export const EMPTY: Notebook = {
  format: 'basinbook-notebook',
  version: 3,
  id: 'book',
  name: 'Test pool',
  place: '',
  note: '',
  profile: 'metric',
  units: {},
  scenarios: { first: { id: 'first', name: 'As tested', note: '', order: 'a0', sample: null } },
  samples: {},
  cells: {},
  worksheets: {},
  rows: {},
  cases: {},
  rules: {},
  shelf: {},
  charts: {},
  precisions: {},
  plans: {},
  additions: {},
  remarks: {},
  lessons: {},
  computedWith: {},
}

export const number = (canonical: number, unit = 'pH'): Reading => ({
  kind: 'value',
  entered: String(canonical),
  unit,
  canonical,
})

export const sample = (id: string, readings: Readonly<Record<string, Reading>>, elsewhere = false): Sample => ({
  id,
  name: `Sample ${id}`,
  date: '',
  elsewhere,
  readings,
})

export const scenario = (id: string, order: string, name = id, sampleId: string | null = null): Edit => ({
  type: 'add_scenario',
  scenario: { id, name, note: '', order, sample: sampleId },
  cells: {},
})

export const cell = (scenarioId: string, quantity: string, content: Cell | null): Edit => ({
  type: 'set_cell',
  scenario: scenarioId,
  quantity,
  cell: content,
})

/** Applies an edit that is expected to succeed. */
export function applied(notebook: Notebook, edit: Edit): Applied {
  const result = apply(notebook, edit)
  if (isProblem(result)) throw new Error(sentence(result))
  return result
}

export function edited(notebook: Notebook, ...edits: readonly Edit[]): Notebook {
  return edits.reduce((now, edit) => applied(now, edit).notebook, notebook)
}

/** The sentence of a refusal; says so when nothing was refused. */
export function refusal(result: unknown): string {
  return isProblem(result) ? sentence(result) : 'not refused'
}

/** Freezes a document through and through, so that any write to it throws. */
export function frozen<T>(value: T): T {
  if (typeof value === 'object' && value !== null && !Object.isFrozen(value)) {
    Object.freeze(value)
    Object.values(value).forEach(frozen)
  }
  return value
}
