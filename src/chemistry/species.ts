import type { ActivityModel } from './activity'
import {
  PK_CYANURIC_2,
  PK_CYANURIC_3,
  pKBoric,
  pKCarbonic1,
  pKCarbonic2,
  pKCyanuric1,
  pKHypochlorous,
  pKWater,
  vantHoff,
} from './equilibriumConstants'

/** The parts that species are made of beside H+ and water. */
export const METALS = ['calcium', 'magnesium', 'sodium'] as const
/** Each stands for its reference form: CO3--, SO4--, B(OH)3, H3Cy, HOCl. */
export const LIGANDS = ['carbonate', 'sulfate', 'borate', 'cyanurate', 'chlorine'] as const

export type Metal = (typeof METALS)[number]
export type Ligand = (typeof LIGANDS)[number]

/** One dissolved species: formed from at most one metal, one ligand, H+ (`protons`, negative = given off) and HOCl. */
export interface Species {
  readonly name: string
  readonly charge: number
  readonly activity: ActivityModel
  readonly metal: Metal | undefined
  readonly ligand: Ligand | undefined
  readonly protons: number
  /** HOCl taken up by a chlorinated cyanurate */
  readonly hocl: number
  /** what one mole counts in alkalinity, in equivalents */
  readonly base: number
  /** log10 K of the forming reaction at T kelvin, zero ionic strength */
  readonly logK: (T: number) => number
}

const wateq = (size: number, b = 0): ActivityModel => ({ model: 'wateq', size, b })
const davies: ActivityModel = { model: 'davies' }
const neutral: ActivityModel = { model: 'neutral', b: 0.1 }
const reference = () => 0

/** CaHCO3+ and CaCO3 aq from Ca++ and HCO3- or CO3--; Plummer & Busenberg 1982 */
const calciumBicarbonate = (T: number) => 1209.12 + 0.31294 * T - 34765.05 / T - 478.782 * Math.log10(T)
const calciumCarbonate = (T: number) => -1228.732 - 0.299444 * T + 35512.75 / T + 485.818 * Math.log10(T)
/** Mg++ + HCO3-; Siebert & Hostetler, USGS J. Res. 5 (1977) 447-455, as given by Nordstrom et al. 1990 */
const magnesiumBicarbonate = (T: number) => -59.215 + 2537.455 / T + 20.92298 * Math.log10(T)
/** Mg++ + CO3--; Reardon & Langmuir 1974 as given by Nordstrom et al. 1990 */
const magnesiumCarbonate = (T: number) => 0.991 + 0.00667 * T
/** SO4-- + H+; Nordstrom et al. 1990 */
const bisulfate = (T: number) => -56.889 + 0.006473 * T + 2307.9 / T + 19.8858 * Math.log10(T)
/** Na+ + HCO3-; Nordstrom et al. 1990 */
const sodiumBicarbonate = vantHoff(-0.25, -1)
/**
 * Na+ + HCO3- = NaCO3- + H+; thermo.com.V8.R6.230, Lawrence Livermore National Laboratory (Johnson, Anderson & Parkhurst
 * 2000): log K 0.51 for Na+ + CO3-- at 25 °C. Sources disagree: the older 1.27 with 8.91 kcal/mol (Nordstrom et al. 1990)
 * would pair half of the carbonate ion in warm water of 6000 mg/L salt, and puts pH after soda ash 0.13 below a reference
 * calculation.
 */
const sodiumCarbonate = vantHoff(-9.8144, -1.3509)

/**
 * Chlorinated cyanurates: K7a and K9a with their temperature dependence from Wahman & Alexander, Environ. Eng. Sci. 36
 * (2019) 283-294; the acid steps K1a, K2, K4, K8 at 25 °C from O'Brien, Morris & Butler 1974.
 */
const bound1 = (T: number) => 2229 / T - 1.65 - pKCyanuric1(T)
const bound2 = (T: number) => bound1(T) + 2028 / T - 2.15

type Parts = '' | Metal | Ligand | `${Metal} ${Ligand}`

function species(
  name: string,
  charge: number,
  activity: ActivityModel,
  of: Parts,
  protons: number,
  base: number,
  logK: (T: number) => number,
  hocl = 0,
): Species {
  const metal = METALS.find((part) => of.split(' ').includes(part))
  const ligand = LIGANDS.find((part) => of.split(' ').includes(part))
  return { name, charge, activity, metal, ligand, protons, base, logK, hocl }
}

/**
 * Every species of the water. Ion sizes (Å) and b from Truesdell & Jones 1974 and, for pairs, from WATEQ4F (Ball & Nordstrom,
 * USGS Open-File Report 91-183, 1991); ions without a published size use the Davies equation. Pairs of sodium with
 * chloride, of borate and of cyanurate are left out: at pool strength they move no result by a hundredth.
 */
export const SPECIES: readonly Species[] = [
  species('H+', 1, wateq(9), '', 1, -1, reference),
  species('OH-', -1, wateq(3.5), '', -1, 1, (T) => -pKWater(T)),

  species('Ca++', 2, wateq(5, 0.165), 'calcium', 0, 0, reference),
  species('Mg++', 2, wateq(5.5, 0.2), 'magnesium', 0, 0, reference),
  species('Na+', 1, wateq(4, 0.075), 'sodium', 0, 0, reference),
  species('CaOH+', 1, wateq(6), 'calcium', -1, 1, () => -12.78),
  species('MgOH+', 1, wateq(6.5), 'magnesium', -1, 1, vantHoff(-11.44, 15.952)),

  species('CO3--', -2, wateq(5.4), 'carbonate', 0, 2, reference),
  species('HCO3-', -1, wateq(5.4), 'carbonate', 1, 1, pKCarbonic2),
  species('CO2', 0, neutral, 'carbonate', 2, 0, (T) => pKCarbonic1(T) + pKCarbonic2(T)),
  species('CaHCO3+', 1, wateq(6), 'calcium carbonate', 1, 1, (T) => calciumBicarbonate(T) + pKCarbonic2(T)),
  species('CaCO3', 0, neutral, 'calcium carbonate', 0, 2, calciumCarbonate),
  species('MgHCO3+', 1, wateq(4), 'magnesium carbonate', 1, 1, (T) => magnesiumBicarbonate(T) + pKCarbonic2(T)),
  species('MgCO3', 0, neutral, 'magnesium carbonate', 0, 2, magnesiumCarbonate),
  species('NaHCO3', 0, neutral, 'sodium carbonate', 1, 1, (T) => sodiumBicarbonate(T) + pKCarbonic2(T)),
  species('NaCO3-', -1, wateq(5.4), 'sodium carbonate', 0, 2, (T) => sodiumCarbonate(T) + pKCarbonic2(T)),

  species('SO4--', -2, wateq(5, -0.04), 'sulfate', 0, 0, reference),
  species('HSO4-', -1, wateq(4.5), 'sulfate', 1, -1, bisulfate),
  species('CaSO4', 0, neutral, 'calcium sulfate', 0, 0, vantHoff(2.3, 1.65)),
  species('MgSO4', 0, neutral, 'magnesium sulfate', 0, 0, vantHoff(2.37, 4.55)),
  species('NaSO4-', -1, wateq(5.4), 'sodium sulfate', 0, 0, vantHoff(0.7, 1.12)),

  species('B(OH)3', 0, neutral, 'borate', 0, 0, reference),
  species('B(OH)4-', -1, davies, 'borate', -1, 1, (T) => -pKBoric(T)),

  species('HOCl', 0, neutral, 'chlorine', 0, 0, reference),
  species('OCl-', -1, davies, 'chlorine', -1, 1, (T) => -pKHypochlorous(T)),

  species('H3Cy', 0, neutral, 'cyanurate', 0, 0, reference),
  species('H2Cy-', -1, davies, 'cyanurate', -1, 1, (T) => -pKCyanuric1(T)),
  species('HCy--', -2, davies, 'cyanurate', -2, 2, (T) => -pKCyanuric1(T) - PK_CYANURIC_2),
  species('Cy---', -3, davies, 'cyanurate', -3, 3, (T) => -pKCyanuric1(T) - PK_CYANURIC_2 - PK_CYANURIC_3),

  species('HClCy-', -1, davies, 'cyanurate', -1, 1, bound1, 1),
  species('H2ClCy', 0, neutral, 'cyanurate', 0, 0, (T) => bound1(T) + 5.33, 1),
  species('ClCy--', -2, davies, 'cyanurate', -2, 2, (T) => bound1(T) - 10.12, 1),
  species('Cl2Cy-', -1, davies, 'cyanurate', -1, 1, bound2, 2),
  species('HCl2Cy', 0, neutral, 'cyanurate', 0, 0, (T) => bound2(T) + 3.75, 2),
  species('Cl3Cy', 0, neutral, 'cyanurate', 0, 0, (T) => bound2(T) + 5.55, 3),
]
