import type { WithOwn } from './catalogFor'
import type { OwnRows } from './ownRow'

let catalogWith: typeof import('./catalogFor').catalogWith | null = null

/** Fetches what reads worksheet definitions, which is large; only notebooks with worksheets or rows of their own need it. */
export async function prepareOwnWorksheets(): Promise<void> {
  catalogWith ??= (await import('./catalogFor')).catalogWith
}

/** What of a notebook makes its worksheets others than the shipped ones. */
export interface OwnParts {
  readonly worksheets: Readonly<Record<string, unknown>>
  readonly rows: OwnRows
}

export function hasOwnParts({ worksheets, rows }: OwnParts): boolean {
  return Object.keys(worksheets).length + Object.keys(rows).length > 0
}

/**
 * The shipped worksheets and a notebook's own, with its own rows; null when it has none of its own.
 * @throws RangeError before `prepareOwnWorksheets` is done: a defect of ours
 */
export function withOwnWorksheets(parts: OwnParts): WithOwn | null {
  if (!hasOwnParts(parts)) return null
  if (!catalogWith) throw new RangeError('what reads worksheets was not prepared')
  return catalogWith(parts.worksheets, parts.rows)
}
