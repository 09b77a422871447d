import { HyperFormula } from 'hyperformula'
import { CONFIG } from '../../src/engine/columns'
import { layoutFor } from '../../src/engine/layout'
import { Live } from '../../src/engine/live'
import { NoticeBoard } from '../../src/engine/notices'
import { registerFunctions } from '../../src/engine/plugin'
import { type Content, createWriter } from '../../src/engine/sheets'
import type { Edit } from '../../src/notebook/edit'
import { baselineOf, inOrder } from '../../src/notebook/order'
import { resolve } from '../../src/notebook/resolve'
import { catalogFor } from '../../src/worksheet/catalogFor'
import { notebookOf } from './waters'

/** As the page's bench enters them. */
const phOf = (i: number) => 7.2 + ((i * 7) % 50) / 100

/** Sets pH in the baseline of a notebook, through the live engine: every value brought up to date and told. One edit a call. */
export function liveEdits(scenarios: number): (number: number) => void {
  const notebook = notebookOf(scenarios)
  const live = new Live(notebook)
  live.all()
  const scenario = baselineOf(notebook).id
  return (number) => {
    const canonical = phOf(number)
    const cell = { kind: 'value', entered: String(canonical), unit: 'pH', canonical } as const
    live.edit([{ type: 'set_cell', scenario, quantity: 'ph', cell } satisfies Edit])
  }
}

/** The same cells in HyperFormula alone. One edit a call. */
export function bareEdits(scenarios: number, column: 'baseline' | 'last' = 'baseline'): (number: number) => void {
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
  const hf = HyperFormula.buildFromSheets(createWriter(layout, () => undefined, 0).sheets(columns), {
    ...CONFIG,
    context: new NoticeBoard(),
  })
  const address = { sheet: 0, row: layout.rowOf.get('ph') ?? 0, col: column === 'baseline' ? 0 : order.length - 1 }
  return (number) => void hf.setCellContents(address, phOf(number))
}
