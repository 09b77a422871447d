import type { Problem } from '../../words/problem'

/** A text in a field that gives no figure: it stays as it was written, with the reason beside it. */
export interface Unread {
  readonly text: string
  readonly why: Problem
}

/** What stands in a field for a figure: a canonical value, nothing, or what cannot be read. */
export type Entered = number | null | Unread

export function isUnread(entered: Entered): entered is Unread {
  return entered !== null && typeof entered !== 'number'
}
