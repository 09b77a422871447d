import { wait } from './clock'
import { type Draft, moveTo, numberOf, rule } from './draft'

/** A hair under the pH against air, which is only neared in time. */
const NEAR = 0.05

/**
 * Lets carbon dioxide leave the water until `ph`, or as far as air takes it; alkalinity stays as it reads. Answers false where
 * air does not raise the pH, or no rule tells how.
 */
export function aerate(draft: Draft, ph: number): boolean {
  const hours = rule(draft, 'alkalinity_down', 'wait_hours')
  if (hours !== undefined) draft.beforeAir?.()
  const now = numberOf(draft, 'ph')
  if (hours === undefined || now === undefined) return false
  const reached = byAir(draft, ph)
  if (reached <= now + 0.01) return false
  wait(draft, hours, 'plan.step.aerate', ['alkalinity_down'], () => moveTo(draft, { ph: reached }))
  return reached >= ph
}

/** How far toward a pH air alone takes the water. */
export function byAir(draft: Draft, ph: number): number {
  const against = numberOf(draft, 'ph_against_air')
  return against === undefined ? ph : Math.min(ph, against - NEAR)
}
