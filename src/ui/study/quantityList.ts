import type { Outline, OutlineQuantity } from '../../worksheet/catalog'

export interface Listed {
  readonly worksheet: Outline['worksheets'][number]
  readonly quantities: readonly OutlineQuantity[]
}

/** The quantities of each worksheet that can be drawn or found: numbers, and none that only other pages read. */
export function numbersOf(catalog: Outline, kind: 'input' | 'computed' | 'any'): readonly Listed[] {
  return catalog.worksheets
    .map((worksheet) => ({
      worksheet,
      quantities: worksheet.groups
        .filter(({ hidden }) => !hidden)
        .flatMap(({ rows }) => rows)
        .flatMap((row) => (typeof row === 'string' ? [] : (catalog.quantities.get(row.name) ?? [])))
        .filter(({ row }) => row.unit !== 'choice' && row.unit !== 'truth')
        .filter(({ formula }) => kind === 'any' || (kind === 'input') === (formula === null)),
    }))
    .filter(({ quantities }) => quantities.length > 0)
}
