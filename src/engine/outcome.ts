import type { Value } from '../functions/define'
import type { Problem } from '../words/problem'

/** A mark on a cell that has a value: `fitted:temperature`, `assumed:cyanuric_acid`, `unlikely:ph`, `disagree:tds`. */
export type Notice = string

/**
 * What the engine says of one cell. A problem with code `missing` carries `facts.names`: every reading that the cell
 * waits for, in the order in which its formula comes upon them (alternatives joined with `|`).
 */
export type Outcome =
  | { readonly value: Value; readonly notices: readonly Notice[] }
  | { readonly problem: Problem; readonly notices: readonly Notice[] }

export function hasValue(o: Outcome | undefined): o is Extract<Outcome, { value: Value }> {
  return o !== undefined && 'value' in o
}
