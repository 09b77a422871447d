import { bandOf, type Draft, numberIn, numberOf, rule, say, usable } from './draft'
import type { Say, Swim } from './step'

/** Whether people may swim in the water as it was measured. Label and local code come first. */
export function maySwim(draft: Draft): Swim {
  const reasons: Say[] = []
  const free = usable(draft, 'free_chlorine')
  const ph = usable(draft, 'ph')
  const band = bandOf(draft, 'free_chlorine')
  const least = rule(draft, 'swim_again', 'ph_least')
  const most = rule(draft, 'swim_again', 'ph_most')
  const clear = bandOf(draft, 'turbidity')?.high
  const turbidity = numberOf(draft, 'turbidity')
  const closing = rule(draft, 'stabilizer_ratio', 'closing')
  const stabilizer = numberOf(draft, 'cyanuric_acid')
  if (free === undefined) reasons.push(say('plan.swim.chlorine_unknown'))
  else {
    if (band?.low !== undefined && free < band.low)
      reasons.push(say('plan.swim.chlorine_low', { free, least: band.low }))
    if (band?.high !== undefined && free > band.high)
      reasons.push(say('plan.swim.chlorine_high', { free, most: band.high }))
    if (closing !== undefined && stabilizer !== undefined && stabilizer > closing * free) {
      reasons.push(say('plan.swim.ratio', { closing }))
    }
  }
  if (ph === undefined) reasons.push(say('plan.swim.ph_unknown'))
  else if ((least !== undefined && ph < least) || (most !== undefined && ph > most))
    reasons.push(say('plan.swim.ph', { ph }))
  if (clear !== undefined && turbidity !== undefined && turbidity > clear)
    reasons.push(say('plan.swim.turbid', { turbidity }))
  if (numberIn(draft.answers, 'combined_chlorine') !== undefined) {
    const combined = numberIn(draft.answers, 'combined_chlorine') ?? 0
    const allowed = bandOf(draft, 'combined_chlorine')?.high
    if (allowed !== undefined && combined > allowed) reasons.push(say('plan.swim.combined', { combined }))
  }
  return { now: reasons.length === 0 ? 'yes' : 'no', reasons }
}
