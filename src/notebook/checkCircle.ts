import { type Problem, problem } from '../words/problem'
import { hasWords, say } from '../words/say'
import type { Outline } from '../worksheet/catalog'
import { circleThrough, keyOf } from './cellGraph'
import type { CellPlace } from './cellPlace'
import type { Edit } from './edit'
import type { Notebook } from './notebook'
import { inOrder } from './order'
import { planOf, readsOthers } from './planLink'

const NOTHING = { kind: 'not_taken' } as const

/** So many cells of a circle are named; of a longer one the first and the last. */
const NAMED = 6

/**
 * Why an edit cannot stand: some formula or plan would wait for its own answer, through whichever scenarios. Null when none would.
 * @param after the document with the edit
 */
export function checkCircle(after: Notebook, catalog: Outline, edit: Edit): Problem | null {
  const circle = circleThrough(after, catalog, changedCells(after, edit))
  if (circle === null) return null
  const names = [...circle, ...circle.slice(0, 1)].flatMap((place, at) => [
    nameOf(after, catalog, place),
    ...(at < circle.length ? planAfter(after, place) : []),
  ])
  const told = names.length <= NAMED ? names : [...names.slice(0, NAMED - 2), '…', ...names.slice(-1)]
  return problem('link_circle', [], { circle: told.join(' → ') })
}

/** The cells that read other cells than before; a circle that is new runs through one of them. */
function changedCells(after: Notebook, edit: Edit): readonly CellPlace[] {
  switch (edit.type) {
    case 'set_cell': {
      // A value reads nothing; one that is taken away uncovers what stands below it, here and in those that follow.
      const { cell, scenario, quantity } = edit
      if (cell !== null && !readsOthers(cell)) return []
      const all = inOrder(after)
      const here = all[0]?.id === scenario ? all.map(({ id }) => id) : [scenario]
      return cell === null && !hasFormulas(after) ? [] : here.map((id) => ({ scenario: id, quantity }))
    }
    case 'add_scenario':
      return Object.entries(edit.cells).flatMap(([quantity, cell]) =>
        readsOthers(cell) ? [{ scenario: edit.scenario.id, quantity }] : [],
      )
    case 'change_scenario':
      return edit.set.sample === undefined ? [] : withFormulas(after)
    case 'put_sample':
      return withFormulas(after)
    // What a row reads may lead from a plan to what follows it; a circle of formulas alone the engine says itself.
    case 'put_row':
    case 'put_worksheet':
    case 'remove_row':
    case 'remove_worksheet':
      return withPlans(after)
    case 'together':
      return edit.edits.flatMap((one) => changedCells(after, one))
    default:
      return []
  }
}

/** Cells that read others by what was put into them: without one there is no way from a scenario to another but the baseline. */
function withFormulas(notebook: Notebook): readonly CellPlace[] {
  return Object.entries(notebook.cells).flatMap(([key, cell]) => {
    const [scenario = '', quantity = ''] = key.split('/')
    return readsOthers(cell) ? [{ scenario, quantity }] : []
  })
}

function withPlans(notebook: Notebook): readonly CellPlace[] {
  return withFormulas(notebook).filter((place) => planOf(notebook.cells[keyOf(place)] ?? NOTHING) !== null)
}

function hasFormulas(notebook: Notebook): boolean {
  return Object.values(notebook.cells).some(readsOthers)
}

/** The plan by which a cell reads what comes next in a circle. */
function planAfter(notebook: Notebook, place: CellPlace): readonly string[] {
  const plan = planOf(notebook.cells[keyOf(place)] ?? NOTHING)
  return plan === null ? [] : [say('formula.plan_of', { scenario: notebook.scenarios[plan]?.name ?? '' })]
}

function nameOf(notebook: Notebook, catalog: Outline, { scenario, quantity }: CellPlace): string {
  const key = `quantity.${quantity}.label`
  const label = catalog.quantities.get(quantity)?.row.label ?? (hasWords(key) ? say(key) : quantity)
  return say('formula.in_scenario', { name: label, scenario: notebook.scenarios[scenario]?.name ?? '' })
}
