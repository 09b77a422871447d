import type { Definition } from './definition'

/** A definition and where it came from. */
export interface Source {
  readonly definition: Definition
  /** what problems call it */
  readonly file: string
  /** comes with the app: locked, and first in order */
  readonly shipped: boolean
  /** its formulas may use the quantities of every worksheet without listing them */
  readonly takesAll?: true
}
