import type { Fact, Problem } from '../words/problem'
import type { Column } from './bench'
import type { Shown, Told } from './cases/standing'

/** `do` is a step of a case in which nothing is dosed: brush, look, clean */
export type StepKind = 'gate' | 'dilute' | 'dose' | 'wait' | 'retest' | 'cell' | 'do'

/** A sentence before it is words: a key of the catalogue and what it speaks of. */
export interface Say {
  readonly key: string
  readonly facts: Readonly<Record<string, Fact>>
}

export interface Amount {
  /** rounded down to what can be measured */
  readonly value: number
  readonly unit: 'kg' | 'L' | 'm³'
  /** whole packs of `pack`, and what is measured beside them; where the size of a pack is known */
  readonly packs?: { readonly whole: number; readonly rest: number; readonly pack: number }
}

export interface Cost {
  readonly cost: number
  /** the next cheapest product for the same step */
  readonly runnerUp?: {
    readonly product: string
    readonly strength?: number
    readonly basis?: string
    readonly cost: number
  }
}

export interface Step {
  readonly kind: StepKind
  readonly says: Say
  /** a product of the contract, or `sequestrant` */
  readonly product?: string
  /** the product's strength and what it counts, as on its label */
  readonly strength?: number
  readonly basis?: string
  readonly amount?: Amount
  /** how many equal shares the amount is given in, one a day */
  readonly times?: number
  /** the first and the second part of what cannot be taken out again; the second is at most that, by the new reading */
  readonly part?: 1 | 2
  /** where and how */
  readonly how: readonly Say[]
  /** the dangers that stand beside this step */
  readonly cautions: readonly Say[]
  readonly pump?: 'on' | 'off'
  readonly cell?: 'on' | 'off'
  /** hours from the start of the plan to the start of this step */
  readonly at: number
  /** hours to wait after it */
  readonly wait: number
  /** what to test again after the wait */
  readonly retest: readonly string[]
  readonly rules: readonly string[]
  readonly notices: readonly string[]
  readonly cost?: Cost
  /** the case that it belongs to, and what the worksheets show beside it */
  readonly case?: string
  readonly shown?: readonly Shown[]
  /** the water that is foretold after it, amount as rounded; what is not known any more is not in it */
  readonly water: Column
  readonly lsi?: number
}

export type VerdictKind = 'nothing' | 'do_not_buy' | 'step' | 'test_again' | 'left_out'

/** What the plan says of one quantity, and why. */
export interface Verdict {
  readonly quantity: string
  readonly verdict: VerdictKind
  readonly reason: Say
}

/** A target that the end of the plan does not meet. */
export interface Unmet {
  readonly quantity: string
  readonly problem: Problem
}

export interface Swim {
  readonly now: 'no' | 'yes'
  readonly reasons: readonly Say[]
  /** the number of the step after which, and after a new test, people may swim again; not given where nothing tells it */
  readonly after?: number
}

/** A case that holds in a plan: what must be true at its end, what not to do, and what it rests on. */
export interface PlanCase {
  readonly id: string
  readonly label: Say
  readonly done: readonly { readonly says: Say; readonly told: Told }[]
  readonly forbids: readonly Say[]
  readonly sources: readonly { readonly mark: string; readonly says: string }[]
  /** readings and observations that it needs and that are not there */
  readonly asks: readonly string[]
}

export interface Plan {
  readonly steps: readonly Step[]
  readonly verdicts: readonly Verdict[]
  readonly unmet: readonly Unmet[]
  /** the water at the end: as measured where nothing was done */
  readonly end: Column
  /** the Langelier index of that water */
  readonly lsi?: number
  /** false where a gate or a missing reading leaves something undecided until a new test */
  readonly complete: boolean
  readonly swim: Swim
  readonly cases: readonly PlanCase[]
  /** the sum, where every product that is needed has a price */
  readonly cost?: number
}
