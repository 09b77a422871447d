import { isSolve, type LockedFunction } from '../../functions/define'
import { FUNCTIONS } from '../../functions/registry'
import type { Notebook } from '../../notebook/notebook'
import { inOrder } from '../../notebook/order'
import { say } from '../../words/say'
import type { Outline } from '../../worksheet/catalog'
import { GENERAL_FUNCTIONS } from '../../worksheet/generalFunctions'
import { labelOf } from '../labelOf'
import { unitWords } from '../unitWords'

/** Something that a formula may name. */
export interface Candidate {
  readonly kind: 'quantity' | 'function' | 'scenario'
  /** as it is written in a formula */
  readonly name: string
  /** the unit of a quantity, the arguments of a function */
  readonly detail: string
  /** what it is, in one line */
  readonly says: string
}

/** Everything that a formula of this notebook may name, quantities first. */
export function candidates(notebook: Notebook, catalog: Outline): readonly Candidate[] {
  return [...quantities(catalog), ...functions(), ...scenarios(notebook)]
}

function quantities({ quantities: known, solves, worksheets }: Outline): Candidate[] {
  const shown = new Set(
    worksheets.flatMap(({ groups }) => groups.flatMap((group) => (group.hidden ? [] : group.rows.map(nameOf)))),
  )
  const rows = [...known.values()]
    .filter(({ name }) => shown.has(name))
    .map(
      ({ name, row }): Candidate => ({ kind: 'quantity', name, detail: unitWords(row.unit), says: labelOf(name, row) }),
    )
  const outputs = [...solves.values()].flatMap(({ id, function: called, outputs: all }) => {
    const f = FUNCTIONS.get(called)
    return all.map((output): Candidate => {
      const unit = f && isSolve(f) ? f.outputs.find(({ name }) => name === output)?.unit : undefined
      return { kind: 'quantity', name: `${id}.${output}`, detail: unitWords(unit ?? '1'), says: labelOf(output) }
    })
  })
  return [...rows, ...outputs]
}

function functions(): Candidate[] {
  const locked = [...FUNCTIONS.values()].filter((f) => !isSolve(f))
  return [
    ...locked.map(
      (f): Candidate => ({
        kind: 'function',
        name: f.name,
        detail: parametersOf(f).join('; '),
        says: say(`function.${f.name}.says`),
      }),
    ),
    ...[...GENERAL_FUNCTIONS.keys()].map(
      (name): Candidate => ({
        kind: 'function',
        name,
        detail: say(`general.${name}.takes`),
        says: say(`general.${name}.says`),
      }),
    ),
  ]
}

function scenarios(notebook: Notebook): Candidate[] {
  return inOrder(notebook).map(({ name }, at): Candidate => {
    if (at === 0) return { kind: 'scenario', name: 'baseline.', detail: '', says: say('formula.baseline') }
    const quoted = `'${name.replaceAll("'", "''")}'.`
    return { kind: 'scenario', name: quoted, detail: '', says: say('formula.scenario', { name }) }
  })
}

export function parametersOf({ parameters }: LockedFunction): readonly string[] {
  return parameters.map(({ name, optional }) => (optional ? `[${name}]` : name))
}

function nameOf(row: string | { readonly name: string }): string {
  return typeof row === 'string' ? row : row.name
}
