import { phFloor } from './acid'
import { byAir } from './aerate'
import { inputsOf } from './amounts'
import { balance } from './balance'
import { largest } from './base'
import type { Chosen } from './choose'
import { wait } from './clock'
import { retest } from './dose'
import { type Draft, moveTo, numberOf, rule, testError } from './draft'
import { foretell } from './foretell'
import { volumeShare } from './judge'

/**
 * Stabilizer is an acid. It goes in by no more at once than the floor of the pH allows, and while it dissolves, carbon dioxide
 * leaves and the pH comes back: no base is needed, which would only raise the alkalinity.
 */
export interface StabilizerAcid {
  /** how much of an amount the water takes as it stands */
  readonly clear: (chosen: Chosen, amount: number) => number
  /** after each dose, where it took the pH down by more than its test can miss */
  readonly settles: () => void
  /** what a longer wait leaves of the fall */
  readonly back: () => void
  readonly floor: number
}

export function stabilizerAcid(draft: Draft): StabilizerAcid {
  const error = testError(draft, 'ph')
  const goal = numberOf(draft, 'target_ph') ?? numberOf(draft, 'ph')
  // a target near the floor would leave no room at all
  const floor = Math.min(phFloor(draft), (goal ?? Number.POSITIVE_INFINITY) - 2 * error)
  const hours = rule(draft, 'stabilizer', 'ph_hours')
  const back = () => {
    const ph = numberOf(draft, 'ph')
    if (ph === undefined || goal === undefined) return
    const reached = byAir(draft, goal)
    if (reached > ph) moveTo(draft, { ph: reached })
  }
  return {
    floor,
    back,
    clear: (chosen, amount) => {
      // without the rule, or where the pH after it cannot be foretold, all of it
      if (hours === undefined || foretell(draft, inputsOf(chosen, amount)).ph === undefined) return amount
      const share = volumeShare(draft)
      return share * largest(draft, chosen, amount / share, { phLeast: floor })
    },
    settles: () => {
      const ph = numberOf(draft, 'ph')
      if (hours === undefined || ph === undefined || goal === undefined || ph >= goal - error) return
      wait(draft, hours, 'plan.step.stabilizer_acid', ['stabilizer'], back)
      retest(draft, ['ph'], 'plan.retest.last', ['stabilizer'])
      // where air does not reach
      balance(draft)
    },
  }
}
