import type { Value } from '../functions/define'
import type { Outline } from '../worksheet/catalog'
import type { Cell } from './notebook'

/**
 * A value that was worked out, as it stands in a cell by itself: with all its digits, so that nothing moves that rests on
 * it. The page shows a figure of so many digits to the row's own resolution.
 */
export function valueCell(catalog: Pick<Outline, 'quantities'>, quantity: string, value: Value): Cell {
  const row = catalog.quantities.get(quantity)?.row
  if (typeof value === 'number')
    return { kind: 'value', entered: String(value), unit: row?.unit ?? '1', canonical: value }
  return row && 'choices' in row && typeof value === 'string'
    ? { kind: 'choice', id: value }
    : { kind: 'formula', text: literal(value) }
}

/** A value as it stands in a formula. A sign binds tighter than a power, so a negative number has parentheses. */
export function literal(value: Value): string {
  if (typeof value === 'boolean') return value ? 'TRUE()' : 'FALSE()'
  if (typeof value === 'string') return `"${value.replaceAll('"', '""')}"`
  return value < 0 ? `(${value})` : String(value)
}
