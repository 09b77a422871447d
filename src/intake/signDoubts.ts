import { type Problem, problem } from '../words/problem'
import { numbersOf } from './evidence'
import type { RawColumn } from './layout'
import { qualified } from './qualifier'
import { ROLES } from './roles'
import { spelling } from './spelling'
import type { Column, Understanding } from './understanding'

/**
 * Signs of a wide file that belong to no reading for certain. `lab_qualifier_apart`: a column of qualifiers that does not
 * say whose they are. `lab_sign_in_heading`: a heading that ends in a sign over plain numbers, which may be limits. Facts
 * `heading` and `found`.
 */
export function signDoubts(
  columns: readonly Column[],
  raw: readonly RawColumn[],
  { shape, decimal }: Pick<Understanding, 'shape' | 'decimal'>,
): readonly Problem[] {
  if (shape !== 'wide') return []
  return columns.flatMap(({ heading, role, quantity }, i) => {
    const texts = raw[i]?.texts ?? []
    const [, sign] = /([<>≤≥])\s*$/.exec(heading) ?? []
    if (quantity !== null && sign !== undefined && numbersOf(texts, decimal).length > 0)
      return [problem('lab_sign_in_heading', [heading], { heading, found: sign })]
    const apart = role !== 'quantity' && ROLES.get(spelling(heading)) === 'qualifier'
    const found = apart ? texts.find((text) => ['under', 'over'].includes(qualified(text, false))) : undefined
    return found === undefined ? [] : [problem('lab_qualifier_apart', [heading], { heading, found })]
  })
}
