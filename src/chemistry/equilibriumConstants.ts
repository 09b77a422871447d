/**
 * Equilibrium constants as functions of temperature, at zero ionic strength and one atmosphere; T in kelvin, results
 * base-10 logarithms.
 *
 * Carbonate, calcite and the calcium pairs: Plummer & Busenberg, Geochim. Cosmochim. Acta 46 (1982) 1011-1040, table 1,
 * fitted 0 to 90 °C. Other pairs: Nordstrom et al., ACS Symposium Series 416 (1990) ch. 31, table 1 (log K at 25 °C and
 * enthalpy in kcal/mol).
 */

/** H2CO3* = H+ + HCO3-; Plummer & Busenberg 1982 */
export function pKCarbonic1(T: number): number {
  return 356.3094 + 0.06091964 * T - 21834.37 / T - 126.8339 * Math.log10(T) + 1684915 / (T * T)
}

/** HCO3- = H+ + CO3--; Plummer & Busenberg 1982 */
export function pKCarbonic2(T: number): number {
  return 107.8871 + 0.03252849 * T - 5151.79 / T - 38.92561 * Math.log10(T) + 563713.9 / (T * T)
}

/** CaCO3 (calcite) = Ca++ + CO3--; Plummer & Busenberg 1982 */
export function pKCalcite(T: number): number {
  return 171.9065 + 0.077993 * T - 2839.319 / T - 71.595 * Math.log10(T)
}

/** H2O = H+ + OH-; Harned & Hamer, J. Am. Chem. Soc. 55 (1933) 2194, as fitted by Harned & Owen (1958), 0 to 60 °C */
export function pKWater(T: number): number {
  return 4470.99 / T - 6.0875 + 0.01706 * T
}

/** CO2 (gas, atm) = H2CO3* (mol/L), log K; Plummer & Busenberg 1982 */
export function logHenryCarbonDioxide(T: number): number {
  return 108.3865 + 0.01985076 * T - 6919.53 / T - 40.45154 * Math.log10(T) + 669365 / (T * T)
}

/** H3Cy = H+ + H2Cy-; Wahman, Environ. Sci.: Water Res. Technol. 4 (2018) 1522-1530, 5 to 35 °C */
export function pKCyanuric1(T: number): number {
  return 1743 / T + 1.12
}

/** H2Cy- = H+ + HCy--, 25 °C; O'Brien, Morris & Butler 1974 (in Rubin, Chemistry of Water Supply, 333-358), K10 */
export const PK_CYANURIC_2 = 11.4

/** HCy-- = H+ + Cy---, 25 °C; O'Brien, Morris & Butler 1974, K12 */
export const PK_CYANURIC_3 = 13.5

/** B(OH)3 + H2O = B(OH)4- + H+: 9.24 at 25 °C, 3.224 kcal/mol; Nordstrom et al. 1990 */
export function pKBoric(T: number): number {
  return -vantHoff(-9.24, 3.224)(T)
}

/** HOCl = H+ + OCl-; Morris, J. Phys. Chem. 70 (1966) 3798-3805, 5 to 35 °C */
export function pKHypochlorous(T: number): number {
  return 3000 / T - 10.0686 + 0.0253 * T
}

const CALORIE = 4.184
const GAS_CONSTANT = 8.314462618
const ROOM = 298.15

/** log K(T) from its value at 25 °C and a reaction enthalpy in kcal/mol that does not change with temperature. */
export function vantHoff(logK: number, enthalpy: number): (T: number) => number {
  const slope = (enthalpy * 1000 * CALORIE) / (Math.LN10 * GAS_CONSTANT)
  return (T) => logK + slope * (1 / ROOM - 1 / T)
}
