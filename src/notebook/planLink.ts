import { type Problem, problem } from '../words/problem'
import type { Cell, Notebook } from './notebook'

/** The scenario whose plan a cell follows; null where it follows none. */
export function planOf(cell: Cell): string | null {
  return 'plan' in cell ? (cell.plan ?? null) : null
}

/** The cell as one that follows a scenario's plan. A formula and a limit have no such form and stay as they are. */
export function following(cell: Cell, plan: string): Cell {
  return cell.kind === 'value' || cell.kind === 'choice' || cell.kind === 'not_taken' ? { ...cell, plan } : cell
}

/** The cell by itself: what it holds now, and follows no plan. */
export function alone<C extends Cell | null>(cell: C): C {
  if (cell === null || planOf(cell) === null) return cell
  const { plan: _, ...bare } = cell as C & { plan?: string }
  return bare as C
}

/** Whether what a cell holds comes from other cells: by a formula, or from the end of a plan. */
export function readsOthers(cell: Cell): boolean {
  return cell.kind === 'formula' || planOf(cell) !== null
}

/** Why a cell of a scenario cannot follow the plan that it names; null when it can, or follows none. */
export function planFault(
  { scenarios }: Pick<Notebook, 'scenarios'>,
  scenario: string,
  cell: Cell | null,
): Problem | null {
  const plan = cell && planOf(cell)
  if (plan === null) return null
  if (plan === scenario) return problem('plan_of_itself')
  return Object.hasOwn(scenarios, plan) ? null : problem('scenario_gone')
}

/** Whether another scenario's cells follow the plan of this one. */
export function isFollowed({ cells }: Pick<Notebook, 'cells'>, scenario: string): boolean {
  return Object.entries(cells).some(([key, cell]) => planOf(cell) === scenario && !key.startsWith(`${scenario}/`))
}

/** The scenarios whose plans some cell of the notebook follows, by id, in the order in which they are come upon. */
export function plansFollowed({ cells }: Pick<Notebook, 'cells'>): readonly string[] {
  const plans = new Set<string>()
  for (const cell of Object.values(cells)) {
    const plan = planOf(cell)
    if (plan !== null) plans.add(plan)
  }
  return [...plans]
}
