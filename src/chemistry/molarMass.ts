/**
 * Molar masses in g/mol from the standard atomic weights (IUPAC 2021, abridged values; conventional where an interval is
 * given).
 */
export const MOLAR_MASS = {
  chlorine: 70.906,
  chloride: 35.453,
  sodiumChloride: 58.443,
  potassiumChloride: 74.551,
  cyanuricAcid: 129.075,
  calciumCarbonate: 100.087,
} as const
