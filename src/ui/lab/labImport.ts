import type { Account } from '../../intake/account'
import type { ImportedColumns } from '../../intake/columnar'
import type { Imported } from '../../intake/job'
import { type Mapping, mappingOf } from '../../intake/mapping'
import type { Understanding } from '../../intake/understanding'
import { newId } from '../../notebook/create'

/** What is said of a lab file that was read in: enough to trace each value to file, row and column. Plain data. */
export interface ImportHead {
  readonly id: string
  /** of the file */
  readonly name: string
  /** bytes */
  readonly size: number
  readonly sha256: string
  /** when it was read in, milliseconds since 1970 */
  readonly read: number
  readonly account: Account
  /** how its columns were read; under this its values come out of the file again */
  readonly mapping: Mapping
  /** the column's heading in the file, or the analyte, by quantity */
  readonly headings: Readonly<Record<string, string>>
  /** by quantity the list that its places are of, as it was when the file was read */
  readonly choices: Readonly<Record<string, readonly string[]>>
}

export interface ImportBody {
  readonly columns: ImportedColumns
  readonly refusedCsv: string
}

export interface LabImport {
  readonly head: ImportHead
  readonly columns: ImportedColumns
  readonly refusedCsv: string
}

export function labImportOf(
  file: Pick<File, 'name' | 'size'>,
  understanding: Understanding,
  { account, columns, refusedCsv, sha256 }: Imported,
  read: number,
): LabImport {
  const { name, size } = file
  const named = [...understanding.columns, ...understanding.analytes].flatMap(({ quantity, heading }) =>
    quantity === null ? [] : [[quantity, heading] as const],
  )
  const headings = Object.fromEntries(named.reverse())
  const used = new Set(columns.quantities.map(({ quantity }) => quantity))
  const choices = Object.fromEntries(
    understanding.known.flatMap((known) =>
      known.choices && used.has(known.name) ? [[known.name, known.choices] as const] : [],
    ),
  )
  const mapping = mappingOf(understanding, name)
  const head = { id: newId(), name, size, sha256, read, account, mapping, headings, choices }
  return { head, columns, refusedCsv }
}
