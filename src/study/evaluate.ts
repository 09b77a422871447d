import type { Value } from '../functions/define'
import type { Problem } from '../words/problem'

/** A scenario's water and pool as columns take it: what is given, by quantity, in canonical units. */
export type Column = ReadonlyMap<string, Value>

/** What the worksheets say of one quantity in one column. */
export type Answer = { readonly value: Value } | { readonly problem: Problem }

/**
 * Where a study has its columns worked out: for each, the answers in the order of `wanted`. It may take a while, and may be
 * given up on the way: then it rejects, and with it the study.
 */
export type Evaluate = (
  columns: readonly Column[],
  wanted: readonly string[],
) => Promise<readonly (readonly Answer[])[]>

/** The column with one quantity given otherwise. */
export function withGiven(column: Column, quantity: string, value: Value): Column {
  return new Map([...column, [quantity, value]])
}

/** Null where there is no answer, or one that is no number. */
export function numberIn(answer: Answer | undefined): number | null {
  return answer && 'value' in answer && typeof answer.value === 'number' ? answer.value : null
}
