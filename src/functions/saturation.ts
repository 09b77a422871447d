import { carbonateAlkalinity } from '../chemistry/carbonateAlkalinity'
import { pKCalcite, pKCarbonic1, pKCarbonic2, pKWater } from '../chemistry/equilibriumConstants'
import { type Failure, fail, isFailure } from '../chemistry/failure'
import { outside } from '../chemistry/outside'
import { saturationPh } from '../chemistry/saturationPh'
import type { Check, Formula, LockedFunction, Parameter } from './define'
import {
  PER_BORON,
  PER_CALCIUM,
  PER_CYANURIC_ACID,
  PER_EQUIVALENT,
  PER_MAGNESIUM,
  PER_SULFATE,
  ZERO_CELSIUS,
} from './waterReadings'

const ph: Parameter = { name: 'ph', unit: 'pH', min: 5, max: 11 }
const temperature: Parameter = { name: 'temperature', unit: '°C', min: 0, max: 45 }
const ionicStrength: Parameter = { name: 'ionic_strength', unit: 'mol/L', min: 0, max: 0.7, fitted: [0, 0.5] }
const carbonate: Parameter = { name: 'carbonate_alkalinity', unit: 'mg/L as CaCO3', min: 0.01, max: 5_000 }
const calcium: Parameter = { name: 'calcium_hardness', unit: 'mg/L as CaCO3', min: 0.01, max: 5_000 }
const total: Parameter = { name: 'total_alkalinity', unit: 'mg/L as CaCO3', min: 0, max: 2_000 }

const STANDARD_METHODS =
  'Standard Methods for the Examination of Water and Wastewater, 2330 B, with the constants of Plummer & Busenberg, Geochim. Cosmochim. Acta 46 (1982) 1011-1040.'
const PLUMMER = 'Plummer & Busenberg, Geochim. Cosmochim. Acta 46 (1982) 1011-1040, table 1; fitted 0 to 90 °C.'
const PLUMMER_25 = 'Plummer & Busenberg 1982, as quoted in public geochemical databases, 25 °C'
const BY_HAND = 'by hand from the 25 °C constants of Standard Methods 2330 B (from memory), no salt'
const TIDYWATER = 'tidywater (open drinking-water package), test expectations, as printed'

/** pHs at a pH, or its failure; arguments in contract units, each checked here as the engine is not the only caller. */
function saturation(p: number, t: number, alkalinity: number, hardness: number, I: number): number | Failure {
  return (
    outside('ph', p, 5, 11) ??
    outside('temperature', t, 0, 45) ??
    outside('carbonate_alkalinity', alkalinity, 0.01, 5_000) ??
    outside('calcium_hardness', hardness, 0.01, 5_000) ??
    outside('ionic_strength', I, 0, 0.7) ??
    saturationPh(t + ZERO_CELSIUS, hardness / PER_CALCIUM, alkalinity / PER_EQUIVALENT, I, p)
  )
}

const PH_SATURATION: Formula = {
  name: 'PH_SATURATION',
  version: 1,
  parameters: [ph, temperature, carbonate, calcium, ionicStrength],
  result: { name: 'ph_saturation', unit: 'pH' },
  source: STANDARD_METHODS,
  equation: String.raw`\mathrm{pH_s} = \mathrm{p}K_2 - \mathrm{p}K_s + \mathrm{p[Ca^{2+}]} + \mathrm{p[HCO_3^-]} + 5\,\mathrm{p}f_m`,
  evaluate: saturation,
  checks: [
    { args: [7, 25, 50.0435, 100.087, 0], expect: 7.85, tolerance: 0.01, where: `${BY_HAND}: 10.33 - 8.48 + 3 + 3` },
    {
      args: [7, 25, 5.00435, 1000.87, 0],
      expect: 7.85,
      tolerance: 0.01,
      where: `${BY_HAND}: 10.33 - 8.48 + 2 + 4`,
    },
    {
      args: [7.5, 25, 34, 150, 0.008],
      expect: 8.231,
      tolerance: 0.2,
      where: 'Carrier simplified formula, 320 mg/L dissolved solids: 9.3 + 0.151 + 2.088 - 1.776 - 1.531',
    },
  ],
}

const LANGELIER_INDEX: Formula = {
  name: 'LANGELIER_INDEX',
  version: 1,
  parameters: [ph, temperature, carbonate, calcium, ionicStrength],
  result: { name: 'lsi', unit: '1' },
  source: STANDARD_METHODS,
  equation: String.raw`\mathrm{LSI} = \mathrm{pH} - \mathrm{pH_s}`,
  evaluate: (p: number, t: number, alkalinity: number, hardness: number, I: number) => {
    const pHs = saturation(p, t, alkalinity, hardness, I)
    return isFailure(pHs) ? pHs : p - pHs
  },
  checks: [
    { args: [8, 25, 200, 99.9, 0.0043], expect: 0.8, tolerance: 0.25, where: `${TIDYWATER}: pH 8, alkalinity 200` },
    { args: [8, 25, 5, 99.9, 0.0014], expect: -0.9, tolerance: 0.25, where: `${TIDYWATER}: pH 8, alkalinity 5` },
    { args: [7, 25, 50.0435, 100.087, 0], expect: -0.85, tolerance: 0.01, where: `${BY_HAND}: 7 - 7.85` },
  ],
}

const CARBONATE_ALKALINITY: Formula = {
  name: 'CARBONATE_ALKALINITY',
  version: 1,
  parameters: [
    ph,
    temperature,
    total,
    { name: 'cyanuric_acid', unit: 'mg/L', min: 0, max: 1_000 },
    { name: 'borate', unit: 'mg/L as B', min: 0, max: 250, fitted: [0, 100] },
    { ...ionicStrength, fitted: [0, 0.2] },
  ],
  result: { name: 'carbonate_alkalinity', unit: 'mg/L as CaCO3' },
  source:
    'Proton balance of a titration to pH 4.5 (Standard Methods 2320 B); constants of Plummer & Busenberg 1982 (carbonate), Wahman 2018 and O’Brien, Morris & Butler 1974 (cyanurate), Nordstrom et al. 1990 (borate). No ion pairs.',
  equation: String.raw`[\mathrm{HCO_3^-}] + 2[\mathrm{CO_3^{2-}}] = \mathrm{TA} - \big[\mathrm{H_2Cy^-} + 2\,\mathrm{HCy^{2-}} + \mathrm{B(OH)_4^-} + \mathrm{OH^-} - \mathrm{H^+}\big]_{4.5}^{\mathrm{pH}} + [\mathrm{HCO_3^-}]_{4.5}`,
  evaluate: (p: number, t: number, alkalinity: number, cyanuric: number, borate: number, I: number) => {
    const refused =
      outside('temperature', t, 0, 45) ??
      outside('total_alkalinity', alkalinity, 0, 2_000) ??
      outside('cyanuric_acid', cyanuric, 0, 1_000) ??
      outside('borate', borate, 0, 250) ??
      outside('ionic_strength', I, 0, 0.7)
    if (refused) return refused
    const found = carbonateAlkalinity(
      p,
      t + ZERO_CELSIUS,
      alkalinity / PER_EQUIVALENT,
      cyanuric / PER_CYANURIC_ACID,
      borate / PER_BORON,
      I,
    )
    return isFailure(found) ? found : found * PER_EQUIVALENT
  },
  checks: [
    {
      args: [7.6, 25, 100, 90, 0, 0.025],
      expect: 70,
      tolerance: 2,
      where: 'Service Industry News, 14 Sep 2021: 100 - 0.33 × 90',
    },
    {
      args: [7.2, 25, 120, 100, 0, 0.025],
      expect: 93,
      tolerance: 2.5,
      where: 'operator-handbook example as quoted by a retail help page: 120 - 27',
    },
  ],
}

const RYZNAR_INDEX: Formula = {
  name: 'RYZNAR_INDEX',
  version: 1,
  parameters: [
    { name: 'ph_saturation', unit: 'pH', min: 0, max: 20 },
    { name: 'ph', unit: 'pH', min: 0, max: 14 },
  ],
  result: { name: 'ryznar', unit: '1' },
  source: 'Ryznar, J. AWWA 36 (1944) 472-486.',
  equation: String.raw`\mathrm{RSI} = 2\,\mathrm{pH_s} - \mathrm{pH}`,
  evaluate: (pHs: number, p: number) => outside('ph_saturation', pHs, 0, 20) ?? outside('ph', p, 0, 14) ?? 2 * pHs - p,
  checks: [
    {
      args: [8.231, 7.5],
      expect: 8.962,
      tolerance: 0.0005,
      where: 'definition, with pHs by the Carrier simplified formula for pH 7.5, 25 °C, hardness 150, alkalinity 34',
    },
  ],
}

/** mg/L that one mg/L of each reading brings to dissolved solids beside sodium chloride; sodium closes the charge. */
const SOLIDS = {
  bicarbonate: (22.99 + 61.016) / (PER_EQUIVALENT / 1000),
  calcium: (40.078 - 2 * 22.99) / (PER_CALCIUM / 1000),
  magnesium: (24.305 - 2 * 22.99) / (PER_MAGNESIUM / 1000),
  sulfate: (96.056 + 2 * 22.99) / (PER_SULFATE / 1000),
  borate: 61.831 / (PER_BORON / 1000),
} as const

type Maybe = number | undefined
const solids = (name: string, max: number): Parameter => ({ name, unit: 'mg/L', min: 0, max, optional: true })

const SALT_FROM_TDS: Formula = {
  name: 'SALT_FROM_TDS',
  version: 1,
  parameters: [
    { name: 'tds', unit: 'mg/L', min: 0, max: 50_000 },
    total,
    { ...calcium, min: 0 },
    solids('cyanuric_acid', 1_000),
    { name: 'borate', unit: 'mg/L as B', min: 0, max: 250, optional: true },
    solids('magnesium', 2_000),
    solids('sulfate', 5_000),
  ],
  result: { name: 'salt', unit: 'mg/L as NaCl' },
  source:
    'Mass and charge balance: dissolved solids are sodium chloride, the bicarbonate of the alkalinity with its sodium, and the other readings, sodium closing the charge. Atomic weights: IUPAC 2021.',
  equation: String.raw`S = \mathrm{TDS} - 1.679\,\mathrm{TA} + 0.059\,\mathrm{CH} - \mathrm{CYA} - 5.72\,\mathrm{B} + 0.892\,\mathrm{Mg} - 1.479\,\mathrm{SO_4}`,
  evaluate: (tds: number, alkalinity: number, hardness: number, cya: Maybe, b: Maybe, mg: Maybe, so4: Maybe) => {
    const refused =
      outside('tds', tds, 0, 50_000) ??
      outside('total_alkalinity', alkalinity, 0, 2_000) ??
      outside('calcium_hardness', hardness, 0, 5_000) ??
      outside('cyanuric_acid', cya ?? 0, 0, 1_000) ??
      outside('borate', b ?? 0, 0, 250) ??
      outside('magnesium', mg ?? 0, 0, 2_000) ??
      outside('sulfate', so4 ?? 0, 0, 5_000)
    if (refused) return refused
    const others =
      alkalinity * SOLIDS.bicarbonate +
      hardness * SOLIDS.calcium +
      (cya ?? 0) +
      (b ?? 0) * SOLIDS.borate +
      (mg ?? 0) * SOLIDS.magnesium +
      (so4 ?? 0) * SOLIDS.sulfate
    return tds < others ? fail('no_such_water', 'tds', { tds, others }) : tds - others
  },
  checks: [
    {
      args: [3184.006, 50.0435, 0],
      expect: 3100,
      tolerance: 0.01,
      where: 'by hand: 3100 mg/L of sodium chloride and 1 mmol/L of sodium bicarbonate (84.006 g/mol)',
    },
    {
      args: [1058.442, 0, 0, undefined, undefined, undefined, undefined],
      expect: 1058.442,
      tolerance: 1e-9,
      where: 'definition: with nothing else dissolved, dissolved solids are the salt',
    },
  ],
}

function pK(
  name: string,
  reaction: string,
  at: (T: number) => number,
  source: string,
  checks: readonly [Check, ...Check[]],
): Formula {
  return {
    name,
    version: 1,
    parameters: [temperature],
    result: { name: name.toLowerCase(), unit: '1' },
    source,
    equation: reaction,
    evaluate: (t: number) => outside('temperature', t, 0, 45) ?? at(t + ZERO_CELSIUS),
    checks,
  }
}

const at25 = (expect: number): Check => ({ args: [25], expect, tolerance: 0.002, where: PLUMMER_25 })

/** Saturation from single readings, salt from dissolved solids, and the constants behind them. */
export const SATURATION_FUNCTIONS: readonly LockedFunction[] = [
  PH_SATURATION,
  LANGELIER_INDEX,
  CARBONATE_ALKALINITY,
  RYZNAR_INDEX,
  SALT_FROM_TDS,
  pK(
    'PK_CARBONIC_1',
    String.raw`\mathrm{p}K_1 = 356.3094 + 0.06091964\,T - \frac{21834.37}{T} - 126.8339 \log_{10} T + \frac{1684915}{T^2}`,
    pKCarbonic1,
    PLUMMER,
    [at25(6.352)],
  ),
  pK(
    'PK_CARBONIC_2',
    String.raw`\mathrm{p}K_2 = 107.8871 + 0.03252849\,T - \frac{5151.79}{T} - 38.92561 \log_{10} T + \frac{563713.9}{T^2}`,
    pKCarbonic2,
    PLUMMER,
    [at25(10.329)],
  ),
  pK(
    'PK_CALCITE',
    String.raw`\mathrm{p}K_s = 171.9065 + 0.077993\,T - \frac{2839.319}{T} - 71.595 \log_{10} T`,
    pKCalcite,
    PLUMMER,
    [at25(8.48)],
  ),
  pK(
    'PK_WATER',
    String.raw`\mathrm{p}K_w = \frac{4470.99}{T} - 6.0875 + 0.01706\,T`,
    pKWater,
    'Harned & Hamer, J. Am. Chem. Soc. 55 (1933) 2194-2206, as fitted in Harned & Owen, The Physical Chemistry of Electrolytic Solutions (1958); 0 to 60 °C.',
    [
      {
        args: [25],
        expect: 13.995,
        tolerance: 0.003,
        where: 'CRC Handbook of Chemistry and Physics, ionization of water, 25 °C (from memory)',
      },
      {
        args: [0],
        expect: 14.947,
        tolerance: 0.02,
        where: 'CRC Handbook of Chemistry and Physics, ionization of water, 0 °C (from memory)',
      },
    ],
  ),
]
