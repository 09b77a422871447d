import type { Given } from '../../src/engine/batch'
import { apply } from '../../src/notebook/apply'
import { addScenario } from '../../src/notebook/commands'
import { newNotebook } from '../../src/notebook/create'
import type { Cell, Notebook } from '../../src/notebook/notebook'
import { baselineOf, inOrder } from '../../src/notebook/order'
import { isProblem } from '../../src/words/problem'
import { shippedCatalog } from '../../src/worksheet/shippedCatalog'

/** Invented waters spread evenly over the usual spans, the same ones in every run. */
export function waters(count: number): Given[] {
  return Array.from({ length: count }, (_, i) => {
    const share = (n: number) => ((i + 1) * n) % 1
    return new Map<string, number>([
      ['ph', 7 + share(0.618)],
      ['temperature', 12 + 20 * share(0.414)],
      ['free_chlorine', 0.5 + 4 * share(0.732)],
      ['total_alkalinity', 60 + 100 * share(0.236)],
      ['calcium_hardness', 100 + 400 * share(0.303)],
      ['cyanuric_acid', 90 * share(0.567)],
      ['salt', 300 + 5000 * share(0.871)],
    ])
  })
}

/** A notebook with this many scenarios; each later one has another temperature and follows the baseline in all else. */
export function notebookOf(scenarios: number): Notebook {
  let notebook = newNotebook('Invented pool', 'As tested', 'metric')
  const set = (scenario: string, quantity: string, value: number) => {
    const unit = shippedCatalog().quantities.get(quantity)?.row.unit ?? ''
    const cell: Cell = { kind: 'value', entered: String(value), unit, canonical: value }
    take({ type: 'set_cell', scenario, quantity, cell })
  }
  const take = (edit: Parameters<typeof apply>[1]) => {
    const applied = apply(notebook, edit)
    if (isProblem(applied)) throw new Error(applied.code)
    notebook = applied.notebook
  }
  const [first] = waters(1)
  for (const [quantity, value] of first ?? []) set(baselineOf(notebook).id, quantity, Number(value))
  for (let i = 1; i < scenarios; i++) {
    take(addScenario(notebook, `What if ${i}`))
    set(inOrder(notebook).at(-1)?.id ?? '', 'temperature', 20 + (i % 10))
  }
  return notebook
}
