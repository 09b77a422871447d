import { addChlorine } from './chlorine'
import { mostChlorine } from './chlorineWanted'
import { retest } from './dose'
import { bandOf, type Draft, moveTo, numberOf, rule, say, usable, verdict } from './draft'
import { foretell } from './foretell'

/** Total less free chlorine of two decimals is not exact. */
const ROUNDING = 1e-6

/**
 * Combined chlorine over what the code allows: the test is checked first, then one closed treatment by stoichiometry, and if
 * that did not help water is renewed. Ten times the reading is never dosed.
 */
export function treatCombined(draft: Draft): void {
  const most = rule(draft, 'combined_chlorine', 'least')
  const combined = usable(draft, 'total_chlorine') === undefined ? undefined : numberOf(draft, 'combined_chlorine')
  if (most === undefined || combined === undefined || draft.refused.has('combined') || draft.noChlorine) return
  if (combined <= Math.max(most, bandOf(draft, 'combined_chlorine')?.high ?? 0) + ROUNDING) return
  verdict(draft, 'combined_chlorine', 'step', say('plan.verdict.high', { quantity: 'combined_chlorine', target: most }))
  retest(draft, ['free_chlorine', 'total_chlorine'], 'plan.retest.combined', ['combined_chlorine'])
  const free = usable(draft, 'free_chlorine')
  const breakpoint =
    numberOf(draft, 'breakpoint_free_chlorine') ?? (free === undefined ? undefined : free + combined / 2)
  if (free === undefined || breakpoint === undefined) return
  const before = draft.steps.length
  addChlorine(draft, Math.min(breakpoint, mostChlorine(draft)), ['combined_chlorine'], 'plan.how.closed_treatment')
  if (draft.steps.length === before) return
  const used = Math.min(breakpoint - free, numberOf(draft, 'free_chlorine') ?? 0)
  moveTo(draft, foretell(draft, { step_chlorine_used: used }))
  moveTo(draft, { total_chlorine: numberOf(draft, 'free_chlorine') })
  retest(draft, ['free_chlorine', 'total_chlorine'], 'plan.retest.combined_after', ['combined_chlorine'])
}
