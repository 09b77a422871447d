import type { Standing, TableColumn } from './tableColumn'

/** A condition on a sample; several hold together. */
export type RowFilter =
  /** in the canonical unit, both ends included */
  | { readonly how: 'range'; readonly column: string; readonly from: number | null; readonly to: number | null }
  | { readonly how: 'below' | 'within' | 'above' | 'outside'; readonly column: string }
  | { readonly how: Standing; readonly column: string }
  /** column null: in any of them */
  | { readonly how: 'text'; readonly column: string | null; readonly text: string }

/** Whether a sample meets the condition. A condition on a column that is gone is met by all. */
export function filterTest(filter: RowFilter, columns: readonly TableColumn[]): (sample: number) => boolean {
  const column = columns.find(({ key }) => key === filter.column)
  if (filter.how === 'text') {
    const wanted = filter.text.trim().toLowerCase()
    const among = column ? [column] : columns.filter(({ kind }) => kind === 'text')
    return (sample) => among.some((one) => one.text(sample).toLowerCase().includes(wanted))
  }
  if (!column) return () => true
  switch (filter.how) {
    case 'range': {
      const from = filter.from ?? Number.NEGATIVE_INFINITY
      const to = filter.to ?? Number.POSITIVE_INFINITY
      return (sample) => {
        const value = column.number(sample)
        return value >= from && value <= to
      }
    }
    case 'outside':
      return (sample) => {
        const side = column.side(sample)
        return side === 'below' || side === 'above'
      }
    case 'below':
    case 'within':
    case 'above': {
      const { how } = filter
      return (sample) => column.side(sample) === how
    }
    default: {
      const { how } = filter
      return (sample) => column.standing(sample) === how
    }
  }
}
