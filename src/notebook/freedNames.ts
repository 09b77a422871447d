import { isProblem } from '../words/problem'
import type { Outline } from '../worksheet/catalog'
import { isDefinition, readDefinition } from '../worksheet/readDefinition'
import { renamedDefinition } from '../worksheet/renamedDefinition'
import { renamedFormula } from '../worksheet/renamedFormula'
import { apply } from './apply'
import type { Edit, SimpleEdit } from './edit'
import type { Notebook } from './notebook'
import { together } from './together'

/** A notebook whose own rows left their names to shipped ones that bear them since. */
export interface FreedNames {
  readonly edit: Edit
  readonly notebook: Notebook
  /** `old → new` */
  readonly renamed: readonly string[]
}

/**
 * A name that a shipped worksheet has means the shipped quantity. A reader's own row of that name, made before, gets
 * another (`my_…`), and what was typed over it and every formula that read it follow. Null where none has to.
 * @param shipped the worksheets that come with the app, without the reader's own
 */
export function freedNames(notebook: Notebook, shipped: Pick<Outline, 'quantities' | 'solves'>): FreedNames | null {
  const isShipped = (name: string) => shipped.quantities.has(name) || shipped.solves.has(name)
  const definitions = Object.entries(notebook.worksheets).flatMap(([id, json]) => {
    const definition = readDefinition(json, id)
    return isDefinition(definition) ? [definition] : []
  })
  const own = [
    ...Object.values(notebook.rows).map(({ row }) => row.name),
    ...definitions.flatMap(({ groups, solves = [] }) => [
      ...groups.flatMap(({ rows }) => rows.flatMap((row) => (typeof row === 'string' ? [] : [row.name]))),
      ...solves.map(({ id }) => id),
    ]),
  ]
  const names = new Map<string, string>()
  for (const name of own.filter(isShipped)) {
    const given = new Set([...own, ...names.values()])
    names.set(
      name,
      freeName(name, (wanted) => isShipped(wanted) || given.has(wanted)),
    )
  }
  if (names.size === 0) return null

  const anew = (text: string) => renamedFormula(text, (name) => names.get(name))
  const edits: SimpleEdit[] = []
  for (const row of Object.values(notebook.rows)) {
    const { name, formula } = row.row
    const content = { ...row.row, name: names.get(name) ?? name, formula: anew(formula) }
    if (content.name !== name || content.formula !== formula)
      edits.push({ type: 'put_row', row: { ...row, row: content } })
  }
  for (const definition of definitions) {
    const renamed = renamedDefinition(definition, names)
    if (JSON.stringify(renamed) !== JSON.stringify(definition))
      edits.push({ type: 'put_worksheet', id: definition.id, definition: renamed })
  }
  for (const [key, cell] of Object.entries(notebook.cells)) {
    const [scenario = '', quantity = ''] = key.split('/')
    const content = cell.kind === 'formula' ? { ...cell, text: anew(cell.text) } : cell
    const name = names.get(quantity)
    if (name !== undefined) edits.push({ type: 'set_cell', scenario, quantity, cell: null })
    if (name !== undefined || (cell.kind === 'formula' && content.kind === 'formula' && content.text !== cell.text))
      edits.push({ type: 'set_cell', scenario, quantity: name ?? quantity, cell: content })
  }
  const edit = together(...edits)
  const applied = apply(notebook, edit)
  if (isProblem(applied)) return null
  return { edit, notebook: applied.notebook, renamed: [...names].map(([before, after]) => `${before} → ${after}`) }
}

const LONGEST = 64

function freeName(name: string, isTaken: (name: string) => boolean): string {
  for (let number = 1; ; number++) {
    const ending = number === 1 ? '' : `_${number}`
    const wanted = `my_${name}`.slice(0, LONGEST - ending.length) + ending
    if (!isTaken(wanted)) return wanted
  }
}
