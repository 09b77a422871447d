import { inputsOf } from './amounts'
import type { Chosen } from './choose'
import { type Draft, numberOf, rule, testError } from './draft'
import { foretell } from './foretell'

/** Products that lie in a floating feeder or a skimmer and dissolve there. */
export const TABLETS: ReadonlySet<string> = new Set(['trichlor'])

/**
 * The rule that keeps so much of a chlorine product out of this pool: tablets on fresh plaster, and stabilised chlorine where
 * the stabilizer would go past its target or past the most, since it cannot be taken out again. Undefined where none does.
 */
export function keptOut(draft: Draft, chosen: Chosen, amount: number): string | undefined {
  const tablets = draft.refused.get('tablets')
  if (tablets !== undefined && TABLETS.has(chosen.item.product)) return tablets
  const most = rule(draft, 'stabilizer_ratio', 'stabilizer_most')
  const now = numberOf(draft, 'cyanuric_acid')
  if (most === undefined || now === undefined) return undefined
  const target = numberOf(draft, 'target_cyanuric_acid')
  const limit = target === undefined ? most : Math.min(most, target + testError(draft, 'cyanuric_acid'))
  const after = foretell(draft, inputsOf(chosen, amount)).cyanuric_acid
  return typeof after === 'number' && after > now && after > limit ? 'stabilizer_ratio' : undefined
}
