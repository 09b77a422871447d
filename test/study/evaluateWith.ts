import { Batch } from '../../src/engine/batch'
import { LOCKED } from '../../src/functions/registry'
import { type Column, type Evaluate, numberIn } from '../../src/study/evaluate'
import { sentence } from '../../src/words/say'
import { buildCatalog, isCatalog } from '../../src/worksheet/buildCatalog'
import type { Catalog } from '../../src/worksheet/catalog'
import type { Row } from '../../src/worksheet/definition'
import { shippedCatalog } from '../../src/worksheet/shippedCatalog'

/** Columns through the engine of the app. */
export function evaluateWith(catalog: Catalog = shippedCatalog()): Evaluate {
  return (columns, wanted) => Promise.resolve(new Batch(catalog, wanted).evaluate(columns))
}

/** One column, one quantity, by itself. */
export function single(column: Column, quantity: string, catalog: Catalog = shippedCatalog()): number | null {
  return numberIn(new Batch(catalog, [quantity]).evaluate([column])[0]?.[0])
}

/** A worksheet of one input or more and formulas over them, all plain numbers. */
export function sheetOf(inputs: readonly string[], formulas: Readonly<Record<string, string>>): Catalog {
  const rows: Row[] = [
    ...inputs.map((name): Row => ({ name, unit: '1', input: 'number', accept: [-1e9, 1e9] })),
    ...Object.entries(formulas).map(([name, formula]): Row => ({ name, unit: '1', formula })),
  ]
  const definition = {
    format: 'basinbook-worksheet' as const,
    version: 1 as const,
    id: 'sheet',
    edition: 1,
    takes: [],
    groups: [{ id: 'all', rows }],
  }
  const catalog = buildCatalog([{ definition, file: 'sheet.json', shipped: true }], LOCKED)
  if (!isCatalog(catalog)) throw new Error(catalog.map(sentence).join('\n'))
  return catalog
}

/** An invented water in an invented pool. */
export const WATER: Column = new Map<string, number | string>([
  ['ph', 7.6],
  ['temperature', 26],
  ['free_chlorine', 3],
  ['total_alkalinity', 90],
  ['calcium_hardness', 250],
  ['cyanuric_acid', 40],
  ['salt', 2600],
  ['measured_volume', 60],
  ['target_salt', 3200],
])
