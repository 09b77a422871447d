import type { Value } from '../functions/define'

/** What was put into the pool, or taken out of it: it happened, whatever a plan said. */
export interface Addition {
  readonly id: string
  /** ISO date, or date and time */
  readonly date: string
  /** a product of the contract, or `water` for water that was renewed */
  readonly product: string
  /** over 0 */
  readonly amount: number
  readonly unit: 'kg' | 'L' | 'm³'
  readonly strength?: number
  /** what the strength counts: mass_percent, trade_percent ... */
  readonly basis?: string
  /** the plan record and its step, counted from 0, that asked for it */
  readonly plan?: string
  readonly step?: number
  readonly note: string
}

/** One step as it was given, in the words and units in which it was given. */
export interface GivenStep {
  readonly kind: string
  readonly says: string
  readonly how: readonly string[]
  readonly cautions: readonly string[]
  readonly product?: string
  readonly amount?: { readonly value: number; readonly unit: Addition['unit'] }
  readonly strength?: number
  readonly basis?: string
  /** hours from the start of the plan, and to wait after it */
  readonly at: number
  readonly wait: number
  readonly retest: readonly string[]
  readonly rules: readonly string[]
  /** the water that was foretold after it, canonical */
  readonly water: Readonly<Record<string, Value>>
  readonly lsi?: number
}

/**
 * A plan as it was given to somebody. It is never changed and never worked out again: its words are kept beside its figures,
 * and the versions of functions, worksheets and rules that it came from.
 */
export interface PlanRecord {
  readonly id: string
  /** ISO date and time */
  readonly date: string
  /** the scenario's name at that time */
  readonly scenario: string
  /** the sample that it rests on; null where the water was a supposed one */
  readonly sample: string | null
  readonly swim: { readonly now: 'no' | 'yes'; readonly says: readonly string[] }
  readonly steps: readonly GivenStep[]
  /** what was found, what to leave alone, what was left out, what is not met: each in a sentence */
  readonly verdicts: readonly { readonly quantity: string; readonly verdict: string; readonly says: string }[]
  readonly complete: boolean
  /** the water that it was made for, and the one foretold at its end, canonical */
  readonly water: Readonly<Record<string, Value>>
  readonly end: Readonly<Record<string, Value>>
  readonly lsi?: number
  readonly versions: Readonly<Record<string, number>>
}

/** What somebody wrote down about the pool on a day. */
export interface Remark {
  readonly id: string
  /** ISO date, or date and time */
  readonly date: string
  readonly text: string
}

/** What the record taught about the pool, once a reader has accepted it. */
export interface Lesson {
  readonly id: string
  /** ISO date on which it was accepted */
  readonly date: string
  readonly kind: 'volume' | 'night' | 'salt_display'
  /** canonical figures by name, such as `volume_low` */
  readonly values: Readonly<Record<string, number>>
  /** ids of the samples and additions that it follows from */
  readonly from: readonly string[]
  readonly note: string
}
