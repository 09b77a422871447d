import { unit } from '../units/unit'
import { say } from '../words/say'

/** Kinds of rows that have no unit, though definitions give one. */
const UNITLESS = new Set(['truth', 'choice'])

/** A unit beside its figure; pH, plain numbers, choices and yes-or-no have none. The one word in symbols is the reader's own. */
export function unitWords(code: string): string {
  return UNITLESS.has(code) ? '' : (unit(code)?.symbol ?? code).replace(/\bday$/, say('page.unit.day'))
}
