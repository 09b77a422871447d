import type { CellBlock } from '../../notebook/clearCells'
import { cellKey, type Notebook } from '../../notebook/notebook'
import { own } from '../../notebook/own'
import { resolve } from '../../notebook/resolve'
import { say } from '../../words/say'
import type { Outline } from '../../worksheet/catalog'

type Quantities = Pick<Outline, 'quantities'>

/** How many cells of the block are worked out with nothing typed over them: there is nothing to take out. */
export function leftWhenCleared(notebook: Notebook, catalog: Quantities, { quantities, scenarios }: CellBlock): number {
  const isBare = (quantity: string, scenario: string) => own(notebook.cells, cellKey(scenario, quantity)) === undefined
  return workedOut(catalog, quantities).reduce(
    (sum, quantity) => sum + scenarios.filter((scenario) => isBare(quantity, scenario)).length,
    0,
  )
}

/** How many cells of the block a fill leaves as they are: a row that is worked out in the first scenario is so in the others. */
export function leftWhenFilled(notebook: Notebook, catalog: Quantities, { quantities, scenarios }: CellBlock): number {
  const [first, ...others] = scenarios
  if (first === undefined) return 0
  const left = workedOut(catalog, quantities).filter(
    (quantity) => resolve(notebook, catalog, first, quantity).from !== 'typed',
  )
  return left.length * others.length
}

/** What was done, and what was left as it is, in one line: `0 entries taken out` alone would not say why. */
export function withLeft(done: string, left: number): string {
  return left === 0 ? done : say('page.grid.and_left', { done, left })
}

function workedOut(catalog: Quantities, quantities: readonly string[]): readonly string[] {
  return [...new Set(quantities)].filter((quantity) => catalog.quantities.get(quantity)?.formula)
}
