import type { Problem } from '../words/problem'
import type { Outline } from '../worksheet/catalog'
import { checkCell, checkReading, checkUnit, type FormulaCheck } from './checkCell'
import { checkEntered } from './checkEntered'
import { checkFormula } from './checkFormula'
import { checkPrecision } from './checkStudy'
import type { Cell, Notebook } from './notebook'

/** A formula whose units do not agree is no reason to refuse a file: its cell has no number, and says why. */
const readable: FormulaCheck = (notebook, catalog, stored) => checkFormula(notebook, catalog, stored)

/**
 * All that does not suit the worksheets in a notebook that comes from outside; each with its place.
 * @param file the file's name
 */
export function checkNotebook(notebook: Notebook, catalog: Outline, file: string): Problem[] {
  const found: Problem[] = []
  const at = (fault: Problem | null, ...place: readonly string[]): void => {
    if (fault !== null) found.push({ ...fault, path: [file, ...place] })
  }
  const ownRows = new Set(Object.values(notebook.rows).map(({ row }) => row.name))
  const twice = (name: string, cell: Cell): Problem | null => {
    const quantity = catalog.quantities.get(name)
    // a row of the reader's own may have been given another unit since: the entry is of the unit before
    if (!quantity || ownRows.has(name) || Object.hasOwn(notebook.worksheets, quantity.worksheet)) return null
    return checkEntered(quantity, cell)
  }
  for (const [key, cell] of Object.entries(notebook.cells)) {
    const name = key.slice(key.indexOf('/') + 1)
    at(checkCell(notebook, catalog, name, cell, readable) ?? twice(name, cell), 'cells', key)
  }
  for (const { id, readings, others = {} } of Object.values(notebook.samples)) {
    for (const [quantity, reading] of Object.entries(readings))
      at(checkReading(catalog, quantity, reading) ?? twice(quantity, reading), 'samples', id, 'readings', quantity)
    for (const [quantity, all] of Object.entries(others))
      for (const [i, reading] of all.entries())
        at(twice(quantity, reading), 'samples', id, 'others', quantity, String(i))
  }
  for (const [quantity, unit] of Object.entries(notebook.units))
    at(checkUnit(catalog, quantity, unit), 'units', quantity)
  for (const [quantity, precision] of Object.entries(notebook.precisions))
    at(checkPrecision(catalog, quantity, precision), 'precisions', quantity)
  return found
}
