import type { ImportedColumns } from '../../intake/columnar'
import { type Texts, textAt } from '../../intake/texts'
import { folded } from '../../storage/folded'

/** Rows of a lab file, as a spreadsheet shows them, in which one of the names stands: as the sample's name or in a note. */
export function rowsAbout(columns: ImportedColumns, names: readonly string[]): readonly number[] {
  const wanted = names.map(folded).filter((name) => name !== '')
  const about = (texts: Texts, i: number) => {
    const text = folded(textAt(texts, i))
    return text !== '' && wanted.some((name) => text.includes(name))
  }
  const all = [columns.names, ...columns.notes.map(({ texts }) => texts)]
  const found: number[] = []
  for (let i = 0; i < columns.count; i++) {
    const row = columns.rows[i]
    if (row !== undefined && all.some((texts) => about(texts, i))) found.push(row)
  }
  return found
}
