import { PK_CYANURIC_2, PK_CYANURIC_3, pKCyanuric1, pKHypochlorous } from './equilibriumConstants'
import { type Failure, fail } from './failure'

/** Ids of the published models of free chlorine and cyanuric acid, both at zero ionic strength. */
export const HOCL_MODELS = ['wahman_2019', 'obrien_1974'] as const
export type HoclModel = (typeof HOCL_MODELS)[number]

/** Temperature range of the 2019 model, K: 5 to 35 °C. */
export const WAHMAN_COLDEST = 278.15
export const WAHMAN_WARMEST = 308.15

/**
 * Equilibrium constants, mol/L, numbered as in the 1974 paper; Cy is C3N3O3. A step that a model leaves out has 0 (an acid
 * that gives nothing off) or Infinity (a form that is not there).
 */
export interface CyanurateConstants {
  /** HOCl = H+ + OCl- */
  readonly hypochlorous: number
  /** Cl3Cy + H2O = HCl2Cy + HOCl */
  readonly k1a: number
  /** HCl2Cy = H+ + Cl2Cy- */
  readonly k2: number
  /** H2ClCy = H+ + HClCy- */
  readonly k4: number
  /** H3Cy = H+ + H2Cy- */
  readonly k6: number
  /** Cl2Cy- + H2O = HClCy- + HOCl */
  readonly k7a: number
  /** HClCy- = H+ + ClCy-- */
  readonly k8: number
  /** HClCy- + H2O = H2Cy- + HOCl */
  readonly k9a: number
  /** H2Cy- = H+ + HCy-- */
  readonly k10: number
  /** HCy-- = H+ + Cy--- */
  readonly k12: number
}

const power = (pK: number) => Math.exp(-Math.LN10 * pK)

/** K9a of the 1974 set closes its circle: K8 K11a / K10, with pK11a 6.90. */
const PK_9A_1974 = 10.12 + 6.9 - PK_CYANURIC_2

/**
 * O'Brien, Morris & Butler, in Rubin (ed.), Chemistry of Water Supply, Treatment, and Distribution, 1974, 333-358, as
 * quoted in a public drinking-water model; all at 25 °C. Its twelve equilibria hold ten independent constants: K3a, K5a and
 * K11a follow from these (pK 2.93, 4.07, 6.90).
 */
const OBRIEN_1974: CyanurateConstants = {
  hypochlorous: power(7.54),
  k1a: power(1.8),
  k2: power(3.75),
  k4: power(5.33),
  k6: power(6.88),
  k7a: power(4.51),
  k8: power(10.12),
  k9a: power(PK_9A_1974),
  k10: power(PK_CYANURIC_2),
  k12: power(PK_CYANURIC_3),
}

/**
 * The constants of a model at T kelvin.
 *
 * `wahman_2019`: Wahman & Alexander, Environ. Eng. Sci. 36 (2019) 283-294, with pK6 by Wahman (2018) and HOCl by Morris
 * (1966); four cyanurate species; fails outside 5 to 35 °C. `obrien_1974`: at 25 °C whatever T is, HOCl too.
 */
export function cyanurateConstants(model: HoclModel, T: number): CyanurateConstants | Failure {
  if (model === 'obrien_1974') return OBRIEN_1974
  if (!(T >= WAHMAN_COLDEST && T <= WAHMAN_WARMEST)) {
    return fail('out_of_range', 'temperature', { value: T - 273.15, min: 5, max: 35 })
  }
  return {
    hypochlorous: power(pKHypochlorous(T)),
    k1a: Number.POSITIVE_INFINITY,
    k2: Number.POSITIVE_INFINITY,
    k4: Number.POSITIVE_INFINITY,
    k6: power(pKCyanuric1(T)),
    k7a: power(2028 / T - 2.15),
    k8: 0,
    k9a: power(2229 / T - 1.65),
    k10: 0,
    k12: 0,
  }
}
