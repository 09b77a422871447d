import type { Outline } from '../worksheet/catalog'
import type { CellPlace } from './cellPlace'
import type { Cell, Notebook } from './notebook'
import { inOrder } from './order'

/** Something that was typed over what the notebook works out. */
export interface Assumption extends CellPlace {
  readonly cell: Cell
}

/**
 * Every assumption of a notebook: by scenario from left to right, then in the order of the worksheets. One in the
 * baseline stands in all scenarios that follow it there, and is listed once.
 */
export function assumptionsOf(
  notebook: Pick<Notebook, 'scenarios' | 'cells'>,
  catalog: Pick<Outline, 'quantities'>,
): readonly Assumption[] {
  const rank = new Map(inOrder(notebook).map(({ id }, at) => [id, at]))
  const found: { readonly one: Assumption; readonly at: number; readonly index: number }[] = []
  for (const [key, cell] of Object.entries(notebook.cells)) {
    const [scenario = '', name = ''] = key.split('/')
    const quantity = catalog.quantities.get(name)
    if (!quantity || quantity.formula === null) continue
    found.push({ one: { scenario, quantity: name, cell }, at: rank.get(scenario) ?? 0, index: quantity.index })
  }
  return found.sort((a, b) => a.at - b.at || a.index - b.index).map(({ one }) => one)
}
