/** The substance that a concentration is counted as: 100 mg/L as Ca and 100 mg/L as CaCO3 are different waters. */
export type Basis = keyof typeof MOLAR_MASS

/**
 * g/mol, from the standard atomic weights of IUPAC 2007 (Wieser and Berglund, Pure and Applied Chemistry 81, 2131, 2009),
 * rounded to 0.001.
 */
export const MOLAR_MASS = {
  CaCO3: 100.087,
  Ca: 40.078,
  Mg: 24.305,
  HCO3: 61.017,
  Cl2: 70.906,
  Cl: 35.453,
  NaCl: 58.443,
  B: 10.811,
  H3BO3: 61.833,
  N: 14.007,
  NH3: 17.031,
  NH4: 18.039,
  P: 30.974,
  PO4: 94.971,
  Br2: 159.808,
} as const

/** g/mol of CaO, by which the German degree of hardness is defined; weights as above. */
export const MOLAR_MASS_CAO = 56.077

export const BASES = Object.keys(MOLAR_MASS) as readonly Basis[]

/**
 * Which bases stand for each other, and how many moles of the second count as one mole of the first. Calcium,
 * magnesium and bicarbonate are each counted as CaCO3 by their charge, but never as each other.
 */
const EQUIVALENT: readonly (readonly [Basis, Basis, number])[] = [
  ['CaCO3', 'Ca', 1],
  ['CaCO3', 'Mg', 1],
  ['CaCO3', 'HCO3', 2],
  ['N', 'NH4', 1],
  ['N', 'NH3', 1],
  ['NH3', 'NH4', 1],
  ['PO4', 'P', 1],
  ['B', 'H3BO3', 1],
]

/** Holds only where somebody asked for it: chloride also comes with calcium and with acid. */
const CHLORIDE_AS_SALT: readonly [Basis, Basis, number] = ['Cl', 'NaCl', 1]

/**
 * Milligrams counted as `to` for one milligram counted as `from`; null when the one does not stand for the other.
 * A concentration with no basis stands only for itself.
 */
export function basisFactor(from: Basis | null, to: Basis | null, chlorideIsSalt = false): number | null {
  if (from === to) return 1
  for (const [a, b, moles] of chlorideIsSalt ? [...EQUIVALENT, CHLORIDE_AS_SALT] : EQUIVALENT) {
    const perMilligram = (MOLAR_MASS[b] * moles) / MOLAR_MASS[a]
    if (a === from && b === to) return perMilligram
    if (a === to && b === from) return 1 / perMilligram
  }
  return null
}
