import type { Problem } from '../../words/problem'

/** A field that was not taken. */
export interface Refused {
  readonly quantity: string
  readonly scenario: string
  readonly why: Problem
}

/** Rows and scenarios that a pasted table names and this notebook does not have, and how many fields they took with them. */
export interface Strangers {
  readonly rows: readonly string[]
  readonly scenarios: readonly string[]
  readonly fields: number
}

/** What became of the fields that were pasted: each is in one of these, unless the whole was refused. */
export interface PasteReport {
  readonly taken: number
  /** in the way of worked-out rows, which are locked */
  readonly locked: number
  /** beyond the last row or scenario */
  readonly beyond: number
  readonly refused: readonly Refused[]
  /** of a table with names: fields that say what stands in their cell already */
  readonly same?: number
  /** of a table with names: what this notebook does not have, and how many fields that took with it */
  readonly strangers?: Strangers
  /** why none of it could be taken, where each by itself could have been */
  readonly whole?: Problem
}
