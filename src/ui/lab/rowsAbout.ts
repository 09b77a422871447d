import type { ImportedColumns } from '../../intake/columnar'
import { type Texts, textAt } from '../../intake/texts'
import { folded } from '../../storage/folded'

/** Rows of a lab file, as a spreadsheet shows them, in which one of the names stands: as the sample's name or in a note. */
export function rowsAbout(columns: ImportedColumns, names: readonly string[]): readonly number[] {
  const about = (texts: Texts, i: number) => isAbout(textAt(texts, i), names)
  const all = [columns.names, ...columns.notes.map(({ texts }) => texts)]
  const found: number[] = []
  for (let i = 0; i < columns.count; i++) {
    const row = columns.rows[i]
    if (row !== undefined && all.some((texts) => about(texts, i))) found.push(row)
  }
  return found
}

/** Whether one of the names stands in a text, whatever its case and accents. */
export function isAbout(text: string, names: readonly string[]): boolean {
  if (text === '') return false
  const small = folded(text)
  return names.map(folded).some((name) => name !== '' && small.includes(name))
}
