import type { Value } from '../functions/define'
import { problem } from '../words/problem'
import { bandOf, type Draft, holds, numberOf, problemIn, rule, say, testError, usable, verdict } from './draft'

/** Where a reading stands: `doubtful` where the error of the test alone could turn the answer. */
export type Call = 'low' | 'high' | 'well' | 'doubtful' | 'unknown'

/**
 * A reading against its target and the range of the pool. Within the test's error of the target it is well, unless it lies
 * outside the range: then it is doubtful as it was read, and on its side where it is foretold, which no test's error blurs.
 * Without a target the range alone speaks. A target outside the range widens it.
 */
export function judge(
  draft: Draft,
  quantity: string,
  target: number | undefined,
  reading: number | undefined = usable(draft, quantity),
): Call {
  if (reading === undefined) return 'unknown'
  const error = testError(draft, quantity)
  const band = bandOf(draft, quantity)
  if (target !== undefined && reading < target - error) return 'low'
  if (target !== undefined && reading > target + error) {
    // calcium that a wall asks at least of is not too much for being more: only new water would take it down
    const isLeast = quantity === 'calcium_hardness' && band?.low !== undefined && band.high === undefined
    return isLeast ? 'well' : 'high'
  }
  const low = Math.min(band?.low ?? Number.NEGATIVE_INFINITY, (target ?? Number.POSITIVE_INFINITY) - error / 2)
  const high = Math.max(band?.high ?? Number.POSITIVE_INFINITY, (target ?? Number.NEGATIVE_INFINITY) + error / 2)
  if (reading >= low && reading <= high) return 'well'
  const off = reading < low ? low - reading : reading - high
  const side = reading < low ? 'low' : 'high'
  if (target === undefined || off > error || draft.taken.get(quantity) !== reading) return side
  // too much of what cannot be taken out calls for no step within the error of its target
  return holds(draft, 'test_again') && (side === 'low' || TAKEN_DOWN.has(quantity)) ? 'doubtful' : 'well'
}

/** What a step can take down without new water. */
const TAKEN_DOWN = new Set(['ph', 'total_alkalinity', 'free_chlorine'])

/** Says that nothing is needed, or that nothing can be done for want of a target. */
export function nothingToAdd(draft: Draft, quantity: string, target: number | undefined, call: Call): void {
  const reading = numberOf(draft, quantity)
  if (reading === undefined) return
  if (call === 'well') {
    const at = target !== undefined && Math.abs(reading - target) <= testError(draft, quantity)
    const key = at ? 'plan.verdict.at_target' : 'plan.verdict.in_range'
    verdict(draft, quantity, 'nothing', say(key, { quantity, reading, ...(at ? { target } : {}) }))
  }
  if (target === undefined && (call === 'low' || call === 'high')) {
    verdict(
      draft,
      quantity,
      'left_out',
      say(`plan.verdict.no_target_${call}`, { quantity, reading, names: [`target_${quantity}`] }),
    )
  }
}

/** A stage that was wanted and cannot be done. */
export function leftOut(draft: Draft, quantity: string, lacking: ReturnType<typeof problem>): void {
  const missing = lacking.code === 'missing' ? lacking.facts.names : undefined
  const names = Array.isArray(missing) ? missing : undefined
  const before = draft.verdicts.findIndex((v) => v.quantity === quantity)
  if (before >= 0) draft.verdicts.splice(before, 1)
  const { rule: id } = lacking.facts
  const why =
    lacking.code === 'plan_kept_out' && id !== undefined
      ? say('plan.verdict.kept_out', { quantity, rule: id })
      : say('plan.verdict.refused', { quantity, code: lacking.code })
  verdict(draft, quantity, 'left_out', names ? say('plan.verdict.missing', { quantity, names }) : why)
  draft.complete = false
}

/** Why a stage cannot rest on a reading: the gate that it failed, or that it was not taken. */
export function unreadable(draft: Draft, quantity: string): void {
  const id = draft.unusable.get(quantity)
  if (id !== undefined) verdict(draft, quantity, 'test_again', say('plan.verdict.failed_gate', { quantity, rule: id }))
  else leftOut(draft, quantity, problemIn(draft.answers, quantity) ?? problem('missing', [], { names: [quantity] }))
  draft.complete = false
}

export type Targets = Readonly<Record<string, Value | undefined>>

export function volumeShare(draft: Draft): number {
  const volume = numberOf(draft, 'volume')
  const low = numberOf(draft, 'volume_low')
  if (!holds(draft, 'low_volume') || volume === undefined || low === undefined || !(volume > 0)) return 1
  return Math.min(1, low / volume)
}

/** The share of a need that goes in at first. */
export function firstShare(draft: Draft, id: string): number {
  return rule(draft, id, 'share') ?? rule(draft, 'low_volume', 'share') ?? 1
}
