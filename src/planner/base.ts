import { isProblem, type Problem } from '../words/problem'
import { type BalanceTargets, balanceTargets } from './acid'
import { inputsOf } from './amounts'
import { type Answers, workedOut } from './bench'
import { type Chosen, choose } from './choose'
import { mixing } from './clock'
import { dose } from './dose'
import { changed, type Draft, holds, numberIn, rule } from './draft'

/** Bicarbonate or soda ash; calcium then waits. */
export function carbonateDose(draft: Draft, chosen: Chosen, amount: number, rules: readonly string[]): boolean {
  const done = dose(draft, chosen, amount, {
    wait: mixing(draft, false),
    rules: [...rules, 'carbonate_and_calcium'],
    retest: ['ph', 'total_alkalinity'],
  })
  if (done) draft.carbonateAt = draft.hour
  return done
}

/** Soda ash (or the base that is named) toward a target: in equal parts, and no further than the water stays clear. */
export function baseUp(draft: Draft, targets: BalanceTargets): boolean | Problem {
  const chosen = choose(draft, 'base', balanceTargets(draft, targets))
  if (isProblem(chosen)) return chosen
  if (chosen.need <= 0) return true
  const ph = rule(draft, 'base_cap', 'ph_most') ?? Number.POSITIVE_INFINITY
  const lsi = rule(draft, 'base_cap', 'lsi_most') ?? Number.POSITIVE_INFINITY
  const amount = largest(draft, chosen, chosen.need, (after) => {
    const foretold = numberIn(after, 'step_ph')
    return foretold !== undefined && foretold <= ph + 1e-6 && (numberIn(after, 'step_lsi') ?? 0) <= lsi
  })
  const parts = Math.max(1, rule(draft, 'base_cap', 'parts') ?? 1)
  for (let i = 0; i < parts; i++) carbonateDose(draft, chosen, amount / parts, ['base_cap'])
  return amount >= chosen.need
}

/**
 * The most of a product, up to `need`, after which the water is still allowed; on the salt that the plan ends with. Candidates
 * are columns, sixteen at a time, so the answer is under the limit by at most a 256th of the need.
 */
export function largest(draft: Draft, chosen: Chosen, need: number, allowed: (after: Answers) => boolean): number {
  const salt = holds(draft, 'final_salt') && draft.finalSalt !== undefined ? { salt: draft.finalSalt } : {}
  let low = 0
  let width = need
  for (let pass = 0; pass < 2; pass++) {
    const amounts = Array.from({ length: GRID }, (_, i) => low + (width * (i + 1)) / GRID)
    const after = workedOut(
      draft.bench,
      amounts.map((amount) => changed(draft.column, { ...salt, ...inputsOf(chosen, amount) })),
    )
    const first = after.findIndex((answers) => !allowed(answers))
    if (first === -1) return amounts.at(-1) ?? low
    low = amounts[first - 1] ?? low
    width /= GRID
  }
  return low
}

const GRID = 16
