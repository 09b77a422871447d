import type { Basis } from './basis'

/** In what other ways a lab or a water company reports a reading. */
export interface Reported {
  /** bases accepted beside that of the canonical unit */
  readonly bases: readonly Basis[]
  /** what a bare mmol/L counts */
  readonly mole?: Basis
  /** what a canonical mg/L without a basis is in truth, so that `mg/L as Cl` is no surprise for chloride */
  readonly own?: Basis
}

const REPORTED: readonly (readonly [quantity: RegExp, Reported])[] = [
  [/calcium_hardness/, { bases: ['Ca'], mole: 'Ca' }],
  // of a total the unit alone does not say which metal; a mole is a mole of either
  [/total_hardness/, { bases: [], mole: 'CaCO3' }],
  // a titration: mmol/L of acid (KS4.3), the same number as mmol/L of bicarbonate
  [/alkalinity/, { bases: ['HCO3'], mole: 'HCO3' }],
  [/^magnesium$/, { bases: ['CaCO3'], mole: 'Mg', own: 'Mg' }],
  [/^chloride$/, { bases: [], mole: 'Cl', own: 'Cl' }],
  [/^ammonia$/, { bases: ['NH3', 'NH4'] }],
  [/^phosphate$/, { bases: ['P'] }],
  [/borate/, { bases: ['H3BO3'] }],
]

const AS_NAMED: Reported = { bases: [] }

/** By contract name; a quantity that is not listed (or not said) is taken in its canonical basis only. */
export function reported(quantity: string | undefined): Reported {
  return REPORTED.find(([pattern]) => quantity !== undefined && pattern.test(quantity))?.[1] ?? AS_NAMED
}
