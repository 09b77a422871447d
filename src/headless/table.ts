import type { ReadRow } from './readRow'

/** What `evaluate` writes: a header, and lines for some rows at a time. */
export interface Table {
  readonly header: readonly string[]
  readonly lines: (rows: readonly ReadRow[]) => readonly (readonly string[])[]
}
