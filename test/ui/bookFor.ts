import { Live } from '../../src/engine/live'
import type { Outcome } from '../../src/engine/outcome'
import { cellKey, type Notebook } from '../../src/notebook/notebook'
import { inOrder } from '../../src/notebook/order'
import { own } from '../../src/notebook/own'
import { resolve } from '../../src/notebook/resolve'
import type { Book } from '../../src/ui/shell/book'
import { displayUnit } from '../../src/units/profile'
import { catalogFor } from '../../src/worksheet/catalogFor'

/** As much of an open notebook as is read, never written: with the engine's numbers, and the reader's own rows and worksheets. */
export function bookFor(notebook: Notebook): Book {
  const catalog = catalogFor(notebook.worksheets, notebook.rows)
  const live = new Live(notebook)
  const outcomes = new Map<string, Outcome>()
  for (const { scenario, quantity, outcome } of live.all()) outcomes.set(cellKey(scenario, quantity), outcome)
  live.close()
  const ids = inOrder(notebook).map(({ id }) => id)
  const book: Partial<Book> = {
    notebook: () => notebook,
    catalog: () => catalog,
    scenarios: () => ids,
    scenario: (id) => own(notebook.scenarios, id),
    baseline: () => ids[0] ?? '',
    outcome: (scenario, quantity) => outcomes.get(cellKey(scenario, quantity)),
    source: (scenario, quantity) => resolve(notebook, catalog, scenario, quantity),
    unit: (quantity) =>
      own(notebook.units, quantity) ?? displayUnit(catalog.quantities.get(quantity)?.row.unit ?? '1', notebook.profile),
  }
  return book as Book
}
