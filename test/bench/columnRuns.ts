import { Batch, type Given } from '../../src/engine/batch'
import { isSolve } from '../../src/functions/define'
import { lockedFunction } from '../../src/functions/registry'
import { shippedCatalog } from '../../src/worksheet/shippedCatalog'

export type Run = (columns: readonly Given[]) => void

/** The columns through the engine, for these quantities. */
export function throughEngine(wanted: readonly string[]): Run {
  const batch = new Batch(shippedCatalog(), wanted)
  return (columns) => void batch.evaluate(columns)
}

/** The same waters through a solve as a bare loop: what the chemistry costs without grid and engine. */
export function throughSolve(name: string): Run {
  const solve = lockedFunction(name)
  if (!solve || !isSolve(solve)) throw new RangeError(`there is no solve ${name}`)
  const fixed: Readonly<Record<string, number | string>> = {
    borate: 0,
    alkalinity_bottle: 'plain',
    hocl_model: 'wahman_2019',
    target_lsi: 0,
    air_co2: 420,
  }
  return (columns) => {
    for (const column of columns) {
      solve.solve(...(solve.parameters.map((p) => column.get(p.name) ?? fixed[p.name]) as never[]))
    }
  }
}

/** The worked-out quantities of a worksheet. */
export function computedOf(worksheet: string): readonly string[] {
  const quantities = [...shippedCatalog().quantities.values()]
  return quantities.filter((q) => q.worksheet === worksheet && q.formula).map((q) => q.name)
}
