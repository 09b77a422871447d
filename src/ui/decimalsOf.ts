import type { Row } from '../worksheet/definition'

/** Places that a row is shown with, in its canonical unit. A row that says nothing is given to the second. */
export function decimalsOf(row: Row): number {
  return row.decimals ?? 2
}
