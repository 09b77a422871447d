import { isProblem, type Problem } from '../words/problem'
import { type BalanceTargets, balanceTargets } from './acid'
import { inputsOf } from './amounts'
import { type Answers, workedOut } from './bench'
import { type Chosen, choose } from './choose'
import { mixing } from './clock'
import { dose } from './dose'
import { changed, type Draft, numberIn, numberOf, rule, testError } from './draft'
import { finalWater } from './finalWater'

/** Bicarbonate or soda ash; calcium then waits. */
export function carbonateDose(draft: Draft, chosen: Chosen, amount: number, rules: readonly string[]): boolean {
  const wait = mixing(draft, false)
  const done = dose(draft, chosen, amount, {
    wait,
    needs: ['ph', 'total_alkalinity'],
    rules: [...rules, 'carbonate_and_calcium'],
    retest: ['ph', 'total_alkalinity'],
  })
  if (done) draft.carbonateAt = draft.hour - wait
  return done
}

/**
 * Soda ash (or the base that is named) toward a target: in equal parts, no further than the water stays clear, and never past
 * the alkalinity that is wanted, which acid would have to take down again.
 */
export function baseUp(draft: Draft, targets: BalanceTargets): boolean | Problem {
  const chosen = choose(draft, 'base', balanceTargets(draft, targets))
  if (isProblem(chosen)) return chosen
  if (chosen.need <= 0) return true
  const clear = {
    ph: rule(draft, 'base_cap', 'ph_most'),
    lsi: rule(draft, 'base_cap', 'lsi_most'),
    ta: mostAlkalinity(draft),
  }
  const amount = largest(draft, chosen, chosen.need, clear)
  const parts = Math.max(1, rule(draft, 'base_cap', 'parts') ?? 1)
  for (let i = 0; i < parts; i++) {
    const part = amount / parts
    // chlorine put in between the parts may have moved the pH
    carbonateDose(draft, chosen, i === 0 ? part : largest(draft, chosen, part, clear), ['base_cap'])
  }
  return amount >= chosen.need
}

/** The alkalinity over which it would be called too much. */
function mostAlkalinity(draft: Draft): number | undefined {
  const target = numberOf(draft, 'target_total_alkalinity')
  return target === undefined ? undefined : target + testError(draft, 'total_alkalinity')
}

/** Limits of the water that a dose may lead to. */
export interface Clear {
  readonly ph?: number | undefined
  /** of the water with all of its salt in */
  readonly lsi?: number | undefined
  /** total alkalinity, of the same water */
  readonly ta?: number | undefined
  readonly phLeast?: number | undefined
}

/**
 * The most of a product, up to `need`, after which the water is still clear. Candidates are columns, sixteen at a time, so the
 * answer is under the limit by at most a 256th of the need. Where a limit cannot be foretold, nothing is allowed.
 */
export function largest(draft: Draft, chosen: Chosen, need: number, { ph, lsi, ta, phLeast }: Clear): number {
  const final = finalWater(draft)
  let low = 0
  let width = need
  for (let pass = 0; pass < 2; pass++) {
    const amounts = Array.from({ length: GRID }, (_, i) => low + (width * (i + 1)) / GRID)
    const columns = (water: typeof final) =>
      workedOut(
        draft.bench,
        amounts.map((amount) => changed(draft.column, { ...water, ...inputsOf(chosen, amount) })),
      )
    const now = columns({})
    const then = columns(final)
    const first = amounts.findIndex(
      (_, i) =>
        over(now[i], 'step_ph', ph) ||
        under(now[i], 'step_ph', phLeast) ||
        over(then[i], 'step_lsi', lsi) ||
        over(then[i], 'step_total_alkalinity', ta),
    )
    if (first === -1) return amounts.at(-1) ?? low
    low = amounts[first - 1] ?? low
    width /= GRID
  }
  return low
}

const GRID = 16

function over(after: Answers | undefined, name: string, most: number | undefined): boolean {
  if (most === undefined) return false
  const value = after && numberIn(after, name)
  return value === undefined || value > most
}

function under(after: Answers | undefined, name: string, least: number | undefined): boolean {
  if (least === undefined) return false
  const value = after && numberIn(after, name)
  return value === undefined || value < least
}
