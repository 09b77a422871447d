import { type ImportedColumns, STATE, UNSAID } from '../../intake/columnar'
import { createTexts, type Texts, textAt } from '../../intake/texts'

/** The columns with some rows of the file blank: they stand in their place, without name, date, notes or readings. */
export function blankRows(columns: ImportedColumns, rows: ReadonlySet<number>): ImportedColumns {
  const blank = Uint8Array.from(columns.rows, (row) => (rows.has(row) ? 1 : 0))
  const texts = (all: Texts): Texts => {
    const kept = createTexts()
    for (let i = 0; i < columns.count; i++) kept.push(blank[i] === 1 ? '' : textAt(all, i))
    return kept.finish()
  }
  return {
    ...columns,
    names: texts(columns.names),
    dates: texts(columns.dates),
    notes: columns.notes.map(({ heading, texts: all }) => ({ heading, texts: texts(all) })),
    quantities: columns.quantities.map((column) => ({
      ...column,
      values: column.values.map((value, i) => (blank[i] === 1 ? Number.NaN : value)),
      states: column.states.map((state, i) => (blank[i] === 1 ? STATE.notTaken : state)),
      decimals: column.decimals.map((places, i) => (blank[i] === 1 ? UNSAID : places)),
    })),
  }
}
