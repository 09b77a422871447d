import type { Problem } from '../../words/problem'
import type { Catalog } from '../../worksheet/catalog'
import type { WithOwn } from '../../worksheet/catalogFor'
import { shippedCatalog } from '../../worksheet/shippedCatalog'

type Worksheets = Readonly<Record<string, unknown>>

const NONE: readonly Problem[] = []
let catalogWith: ((worksheets: Worksheets) => WithOwn) | null = null

/** Fetches what reads worksheet definitions. Only notebooks with worksheets of their own need it. */
export async function prepareOwnWorksheets(): Promise<void> {
  catalogWith ??= (await import('../../worksheet/catalogFor')).catalogWith
}

/** The catalog of a notebook, and why some of its own worksheets are not in it; `prepareOwnWorksheets` comes first. */
export function catalogOf(worksheets: Worksheets): { readonly catalog: Catalog; readonly refused: readonly Problem[] } {
  if (catalogWith && Object.keys(worksheets).length > 0) return catalogWith(worksheets)
  return { catalog: shippedCatalog(), refused: NONE }
}
