import type { Problem } from '../../words/problem'

/** A field that was not taken. */
export interface Refused {
  readonly quantity: string
  readonly scenario: string
  readonly why: Problem
}

/** What became of the fields that were pasted: each is in one of the four, unless the whole was refused. */
export interface PasteReport {
  readonly taken: number
  /** in the way of worked-out rows, which are locked */
  readonly locked: number
  /** beyond the last row or scenario */
  readonly beyond: number
  readonly refused: readonly Refused[]
  /** why none of it could be taken, where each by itself could have been */
  readonly whole?: Problem
}
