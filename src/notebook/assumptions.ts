import type { Outline } from '../worksheet/catalog'
import { type Cell, cellKey, type Notebook } from './notebook'
import { inOrder } from './order'
import { own } from './own'

/** Something that was typed over what the notebook works out. */
export interface Assumption {
  readonly scenario: string
  readonly quantity: string
  readonly cell: Cell
}

/**
 * Every assumption of a notebook: by scenario from left to right, then in the order of the worksheets. One in the
 * baseline stands for all scenarios that follow it there, and is listed once.
 */
export function assumptionsOf(
  notebook: Pick<Notebook, 'scenarios' | 'cells'>,
  catalog: Pick<Outline, 'quantities'>,
): readonly Assumption[] {
  const computed = [...catalog.quantities.values()].filter(({ formula }) => formula !== null)
  return inOrder(notebook).flatMap(({ id }) =>
    computed.flatMap(({ name }): readonly Assumption[] => {
      const cell = own(notebook.cells, cellKey(id, name))
      return cell === undefined ? [] : [{ scenario: id, quantity: name, cell }]
    }),
  )
}
