import { bandOf, type Draft, holds, look, numberIn, numberOf, rule } from './draft'

/**
 * The free chlorine to hold, mg/L: the target, else what keeps the wanted HOCl, and never less than the code asks for. It
 * follows the stabilizer that was measured, not the one planned; it stays under the ratio where a code closes a pool, and never
 * goes over what the tests and the code allow. Undefined where nothing is wanted.
 */
export function chlorineWanted(draft: Draft): number | undefined {
  const stabilizer = holds(draft, 'stabilizer')
    ? draft.measured.get('cyanuric_acid')
    : draft.column.get('cyanuric_acid')
  const target = numberOf(draft, 'target_free_chlorine') ?? forHocl(draft, stabilizer)
  const code = holds(draft, 'order') ? bandOf(draft, 'free_chlorine')?.low : undefined
  if (target === undefined && code === undefined) return undefined
  const closing = rule(draft, 'stabilizer_ratio', 'closing')
  const least = closing !== undefined && typeof stabilizer === 'number' ? stabilizer / closing : 0
  return Math.min(Math.max(target ?? 0, code ?? 0, least), mostChlorine(draft))
}

/** The most that a dose may lead to. */
export function mostChlorine(draft: Draft): number {
  return rule(draft, 'stabilizer_ratio', 'chlorine_most') ?? Number.POSITIVE_INFINITY
}

function forHocl(draft: Draft, stabilizer: unknown): number | undefined {
  if (!draft.column.has('target_hocl') || typeof stabilizer !== 'number') return undefined
  return numberIn(look(draft, { cyanuric_acid: stabilizer }), 'free_chlorine_for_target_hocl')
}
