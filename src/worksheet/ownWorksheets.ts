import type { WithOwn } from './catalogFor'

let catalogWith: ((worksheets: Readonly<Record<string, unknown>>) => WithOwn) | null = null

/** Fetches what reads worksheet definitions, which is large; only notebooks with worksheets of their own need it. */
export async function prepareOwnWorksheets(): Promise<void> {
  catalogWith ??= (await import('./catalogFor')).catalogWith
}

/**
 * The shipped worksheets and a notebook's own; null when it has none of its own.
 * @throws RangeError before `prepareOwnWorksheets` is done: a defect of ours
 */
export function withOwnWorksheets(worksheets: Readonly<Record<string, unknown>>): WithOwn | null {
  if (Object.keys(worksheets).length === 0) return null
  if (!catalogWith) throw new RangeError('what reads worksheets was not prepared')
  return catalogWith(worksheets)
}
