import { standardMethodsPfm } from './activity'
import { pKCalcite, pKCarbonic2 } from './equilibriumConstants'

/**
 * Saturation pH of calcite as Standard Methods for the Examination of Water and Wastewater, 2330 B, has it:
 * pHs = pK2 - pKs + p[Ca] + p[HCO3-] + 5 pfm, with the constants of Plummer & Busenberg (1982) and a Davies-type pfm.
 *
 * T kelvin; `calcium` mol/L; `carbonateAlkalinity` = [HCO3-] + 2 [CO3--] in eq/L; I mol/L; pH is needed to split bicarbonate
 * from carbonate: [HCO3-] = carbonate alkalinity / (1 + 2 K2'/[H+]). No ion pairs. Infinity without calcium or
 * alkalinity.
 */
export function saturationPh(T: number, calcium: number, carbonateAlkalinity: number, I: number, ph: number): number {
  const pfm = standardMethodsPfm(T, I)
  const pK2 = pKCarbonic2(T)
  const bicarbonate = carbonateAlkalinity / (1 + 2 * 10 ** (ph - pK2 + 3 * pfm))
  return pK2 - pKCalcite(T) - Math.log10(calcium) - Math.log10(bicarbonate) + 5 * pfm
}
