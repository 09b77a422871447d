import type { Draft } from './draft'

/** Products that lie in a floating feeder or a skimmer and dissolve there. */
export const TABLETS: ReadonlySet<string> = new Set(['trichlor'])

/** Whether a rule keeps a chlorine product out of this pool. */
export function keptOut(draft: Draft, product: string): boolean {
  return TABLETS.has(product) && draft.refused.has('tablets')
}
