import type { Problem } from '../words/problem'
import { convert } from './convert'
import { reported } from './reported'
import { isUnit, unit } from './unit'

/**
 * A reading in the canonical unit of its quantity, from a unit that `readUnit` gave for it. Knows that a plain mg/L of
 * chloride or magnesium is counted as what it names. Problems as for `convert`.
 */
export function toCanonical(value: number, from: string, canonicalUnit: string, quantity?: string): number | Problem {
  const said = `${canonicalUnit} as ${reported(quantity).own}`
  const based = unit(from)?.basis !== null && isUnit(said)
  return convert(value, from, based ? said : canonicalUnit)
}
