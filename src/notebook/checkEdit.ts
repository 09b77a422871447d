import { isUnit } from '../units/unit'
import { isProblem, type Problem, problem } from '../words/problem'
import type { Outline } from '../worksheet/catalog'
import type { OwnRow } from '../worksheet/ownRow'
import { apply } from './apply'
import { checkCell, checkReading, checkUnit, type FormulaCheck } from './checkCell'
import { checkChart, checkPrecision } from './checkStudy'
import type { Edit, SetCell } from './edit'
import type { Notebook, Sample } from './notebook'
import { together } from './together'

/**
 * Why an edit does not suit the worksheets of the notebook: a quantity that none has, a value that cannot be, a choice
 * that is not offered, a unit of another kind, a formula that names what is not there. Null when it suits.
 *
 * A value or formula over a worked-out row is an assumption, and allowed. That the document itself stays sound is
 * asked of `apply`, and that a new worksheet is one, of the catalog that is built with it.
 */
export function checkEdit(
  notebook: Notebook,
  edit: Edit,
  catalog: Outline,
  checkFormula: FormulaCheck,
): Problem | null {
  switch (edit.type) {
    case 'set_cell':
      return edit.cell === null ? null : checkCell(notebook, catalog, edit.quantity, edit.cell, checkFormula)
    case 'add_scenario':
      // What stands in a cell already may be copied; where its units do not agree, the copy has no number either.
      return firstOf(edit.cells, (quantity, cell) =>
        checkCell(notebook, catalog, quantity, cell, (book, outline, stored) => checkFormula(book, outline, stored)),
      )
    case 'put_sample':
      return checkSample(catalog, edit.sample)
    case 'set_unit':
      return edit.unit === null ? null : checkUnit(catalog, edit.quantity, edit.unit)
    case 'put_chart':
      return checkChart(catalog, edit.chart)
    case 'set_precision':
      return edit.precision === null ? null : checkPrecision(catalog, edit.quantity, edit.precision)
    case 'put_row':
      return checkRow(catalog, edit.row)
    case 'together':
      return checkEach(notebook, edit.edits, catalog, checkFormula)
    default:
      return null
  }
}

/** An edit may speak of what an earlier one of the same step brings. */
function checkEach(
  notebook: Notebook,
  edits: readonly Edit[],
  catalog: Outline,
  checkFormula: FormulaCheck,
): Problem | null {
  let now = notebook
  let known = catalog
  let entries: SetCell[] = []
  for (const edit of edits) {
    const fault = checkEdit(now, edit, known, checkFormula)
    if (fault !== null) return fault
    // No check asks what stands in another cell; entries are made together, before what may.
    if (edit.type === 'set_cell') {
      entries.push(edit)
      continue
    }
    const applied = apply(now, together(...entries, edit))
    if (isProblem(applied)) return applied
    entries = []
    now = applied.notebook
    if (edit.type === 'put_row') known = withRow(known, edit.row)
  }
  return null
}

function checkSample(catalog: Outline, { readings, others = {} }: Sample): Problem | null {
  return (
    firstOf(readings, (quantity, reading) => checkReading(catalog, quantity, reading)) ??
    firstOf(others, (quantity, list) => {
      for (const reading of list) {
        const fault = checkReading(catalog, quantity, reading)
        if (fault !== null) return fault
      }
      return null
    })
  )
}

function withRow(catalog: Outline, { id, worksheet, row: { range: _, ...row } }: OwnRow): Outline {
  const quantity = {
    name: row.name,
    row,
    worksheet,
    index: 0,
    formula: null,
    reads: [],
    readBy: [],
    calls: [],
    own: id,
  }
  return { ...catalog, quantities: new Map([...catalog.quantities, [row.name, quantity]]) }
}

/**
 * Whether its formula can be worked out is shown where the row stands; its name must mean nothing else. It gives no
 * words: nothing works with them, and no list says which there are. One that an older notebook has may still be moved,
 * renamed and mended.
 */
function checkRow({ quantities }: Outline, { id, row: { name, unit } }: OwnRow): Problem | null {
  const other = quantities.get(name)
  if (other !== undefined && other.own !== id) return problem('row_name_taken', [], { name })
  if (unit === 'choice') {
    const hasWords = [...quantities.values()].some(({ own, row }) => own === id && row.unit === 'choice')
    return hasWords ? null : problem('row_of_words')
  }
  return isUnit(unit) || unit === 'truth' ? null : problem('unit_unknown', [], { found: unit })
}

function firstOf<T>(
  record: Readonly<Record<string, T>>,
  check: (key: string, value: T) => Problem | null,
): Problem | null {
  for (const [key, value] of Object.entries(record)) {
    const fault = check(key, value)
    if (fault !== null) return fault
  }
  return null
}
