import { unit } from '../units/unit'

/** Kinds of rows that have no unit, though definitions give one. */
const UNITLESS = new Set(['truth', 'choice'])

/** A unit beside its figure; pH, plain numbers, choices and yes-or-no have none. */
export function unitWords(code: string): string {
  return UNITLESS.has(code) ? '' : (unit(code)?.symbol ?? code)
}
