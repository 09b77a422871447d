import type { Value } from '../functions/define'
import type { Outline } from '../worksheet/catalog'
import { asRead } from './asRead'
import type { Edit, SetCell } from './edit'
import type { Notebook } from './notebook'
import { following, planOf } from './planLink'
import { sameCell } from './sameCell'

/**
 * Brings every cell that follows a scenario's plan to what that plan ends with; null where they are there already. It follows
 * from the edit that changed the plan, so it is no step of history: taking that one back makes the plan anew.
 * @param end readings of the water that the plan ends with; what is not known of it is not taken
 */
export function followPlan(
  notebook: Notebook,
  catalog: Outline,
  plan: string,
  end: ReadonlyMap<string, Value | null>,
): Edit | null {
  const edits = Object.entries(notebook.cells).flatMap(([key, cell]): readonly SetCell[] => {
    if (planOf(cell) !== plan) return []
    const [scenario = '', quantity = ''] = key.split('/')
    const value = end.get(quantity)
    const now =
      value === undefined || value === null
        ? ({ kind: 'not_taken' } as const)
        : asRead(notebook, catalog, plan, quantity, value)
    const anew = following(now, plan)
    return sameCell(cell, anew) ? [] : [{ type: 'set_cell', scenario, quantity, cell: anew }]
  })
  return edits.length === 0 ? null : { type: 'together', edits, of_itself: true }
}
