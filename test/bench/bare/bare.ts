import { HyperFormula } from 'hyperformula'
import { CONFIG } from '../../../src/engine/columns'
import { layoutFor } from '../../../src/engine/layout'
import { NoticeBoard } from '../../../src/engine/notices'
import { registerFunctions } from '../../../src/engine/plugin'
import { type Content, createWriter } from '../../../src/engine/sheets'
import { baselineOf, inOrder } from '../../../src/notebook/order'
import { resolve } from '../../../src/notebook/resolve'
import { catalogFor } from '../../../src/worksheet/catalogFor'
import { notebookOf } from '../waters'

/**
 * The reference: HyperFormula alone, with the very cells that the notebook's engine has, on the page's own thread.
 * Gives the mean time of setting pH in one column, in milliseconds.
 */
function bareEdits(scenarios: number, column: 'baseline' | 'last', edits: number): number {
  registerFunctions()
  const notebook = notebookOf(scenarios)
  const catalog = catalogFor({})
  const layout = layoutFor(catalog)
  const order = inOrder(notebook)
  const baseline = baselineOf(notebook).id
  const columns = order.map(({ id }) => (quantity: string): Content => {
    const { from, cell } = resolve(notebook, catalog, id, quantity)
    if (from === 'baseline' && id !== baseline) return { kind: 'inherit' }
    if (cell?.kind === 'value') return { kind: 'value', value: cell.canonical }
    if (cell?.kind === 'choice') return { kind: 'value', value: cell.id }
    return catalog.quantities.get(quantity)?.formula ? { kind: 'own' } : { kind: 'missing' }
  })
  const hf = HyperFormula.buildFromSheets(createWriter(layout, () => undefined).sheets(columns), {
    ...CONFIG,
    context: new NoticeBoard(),
  })
  const address = { sheet: 0, row: layout.rowOf.get('ph') ?? 0, col: column === 'baseline' ? 0 : order.length - 1 }
  const start = performance.now()
  for (let i = 0; i < edits; i++) hf.setCellContents(address, 7.2 + (i % 50) / 100)
  const mean = (performance.now() - start) / edits
  hf.destroy()
  return mean
}

Object.assign(globalThis, { bareEdits })
