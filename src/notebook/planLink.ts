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
export function alone<C extends Cell>(cell: C): C {
  if (planOf(cell) === null) return cell
  const { plan: _, ...bare } = cell as C & { plan?: string }
  return bare as C
}

/** Whether what a cell holds comes from other cells: by a formula, or from the end of a plan. */
export function readsOthers(cell: Cell): boolean {
  return cell.kind === 'formula' || planOf(cell) !== null
}

/** The scenarios whose plans some cell of the notebook follows, by id, in the order in which they are come upon. */
export function plansFollowed({ cells, scenarios }: Pick<Notebook, 'cells' | 'scenarios'>): readonly string[] {
  const plans = new Set<string>()
  for (const cell of Object.values(cells)) {
    const plan = planOf(cell)
    if (plan !== null && Object.hasOwn(scenarios, plan)) plans.add(plan)
  }
  return [...plans]
}
