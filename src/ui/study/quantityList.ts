import type { Outline, OutlineQuantity } from '../../worksheet/catalog'

export interface Listed {
  readonly worksheet: Outline['worksheets'][number]
  readonly quantities: readonly OutlineQuantity[]
}

/** Whether one of these lists has the quantity: a choice can show no other. */
export function isListed(lists: readonly Listed[], quantity: string): boolean {
  return lists.some(({ quantities }) => quantities.some(({ name }) => name === quantity))
}

/** The quantities of each worksheet that can be drawn or found: numbers, and none that only other pages read. */
export function numbersOf(catalog: Outline, kind: 'input' | 'computed' | 'any'): readonly Listed[] {
  return catalog.worksheets
    .map((worksheet) => ({
      worksheet,
      quantities: worksheet.groups
        .filter(({ hidden }) => !hidden)
        .flatMap(({ rows }) => rows)
        .flatMap((row) => catalog.quantities.get(typeof row === 'string' ? row : row.name) ?? [])
        // a row of the reader's own stands by name, as does one that is shown here and listed where it belongs
        .filter(({ worksheet: home }) => home === worksheet.id)
        .filter(({ row }) => row.unit !== 'choice' && row.unit !== 'truth')
        .filter(({ formula }) => kind === 'any' || (kind === 'input') === (formula === null)),
    }))
    .filter(({ quantities }) => quantities.length > 0)
}
