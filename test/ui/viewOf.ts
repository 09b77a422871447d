import { Live } from '../../src/engine/live'
import type { Outcome } from '../../src/engine/outcome'
import { cellKey, type Notebook } from '../../src/notebook/notebook'
import { inOrder } from '../../src/notebook/order'
import { own } from '../../src/notebook/own'
import { resolve } from '../../src/notebook/resolve'
import type { View } from '../../src/ui/out/view'
import { displayUnit } from '../../src/units/profile'
import { shippedOutline } from '../../src/worksheet/shippedOutline'

/** A notebook with the engine's numbers, as the page has them; of shipped worksheets alone. */
export function viewOf(notebook: Notebook): View {
  const live = new Live(notebook)
  const outcomes = new Map<string, Outcome>()
  for (const { scenario, quantity, outcome } of live.all()) outcomes.set(cellKey(scenario, quantity), outcome)
  live.close()
  const catalog = shippedOutline()
  const ids = inOrder(notebook).map(({ id }) => id)
  return {
    notebook: () => notebook,
    catalog: () => catalog,
    scenarios: () => ids,
    baseline: () => ids[0] ?? '',
    outcome: (scenario, quantity) => outcomes.get(cellKey(scenario, quantity)),
    source: (scenario, quantity) => resolve(notebook, catalog, scenario, quantity),
    unit: (quantity) =>
      own(notebook.units, quantity) ?? displayUnit(catalog.quantities.get(quantity)?.row.unit ?? '1', notebook.profile),
  }
}
