import { calciteEquilibrium } from '../chemistry/calciteEquilibrium'
import { dissolvedSolids } from '../chemistry/dissolvedSolids'
import { type Failure, fail, isFailure } from '../chemistry/failure'
import { langelierIndex } from '../chemistry/langelierIndex'
import { SPECIES } from '../chemistry/species'
import type { Water } from '../chemistry/water'
import { waterAgainstAir } from '../chemistry/waterAgainstAir'
import { waterAtPh } from '../chemistry/waterAtPh'
import { waterForIndex } from '../chemistry/waterForIndex'
import { WATER_AFTER, WATER_AFTER_DILUTION } from './additions'
import { BALANCE_DOSE } from './balanceDose'
import { CALCIUM_DOSE } from './calciumDose'
import type { LockedFunction, Solve } from './define'
import { SATURATION_FUNCTIONS } from './saturation'
import { PER_CALCIUM, PER_EQUIVALENT, WATER_READINGS, type WaterReadings, waterFromReadings } from './waterReadings'

type Result = number | Failure
type Maybe = number | undefined

const CALCITE_SOURCE =
  'Constants: Plummer & Busenberg, Geochim. Cosmochim. Acta 46 (1982) 1011-1040. Langelier index: Standard Methods for the Examination of Water and Wastewater, 2330 B. Ion pairs: Nordstrom et al., ACS Symposium Series 416 (1990) ch. 31. Activity: Truesdell & Jones, J. Res. USGS 2 (1974) 233-248. Cyanurate: Wahman, Environ. Sci.: Water Res. Technol. 4 (2018) 1522-1530.'
const REFERENCE = 'PHREEQC 3.8.9 (USGS), phreeqc.dat, test/published/phreeqc-24.json'

/** The species that a reader may ask for, by the name of the output, in mmol/L. */
const MAIN_SPECIES: readonly (readonly [output: string, species: string])[] = [
  ['carbon_dioxide', 'CO2'],
  ['bicarbonate', 'HCO3-'],
  ['carbonate', 'CO3--'],
  ['cyanurate_ion', 'H2Cy-'],
  ['borate_ion', 'B(OH)4-'],
  ['calcium_ion', 'Ca++'],
  ['calcium_bicarbonate', 'CaHCO3+'],
  ['calcium_carbonate', 'CaCO3'],
  ['calcium_sulfate', 'CaSO4'],
  ['sodium_bicarbonate', 'NaHCO3'],
]
const mainIndex = MAIN_SPECIES.map(([, species]) => SPECIES.findIndex((s) => s.name === species))

const temperatureLow = { name: 'temperature_low', unit: '°C', min: 0, max: 45, optional: true } as const

/** One speciation of the whole water from its readings. */
const WATER: Solve = {
  name: 'WATER',
  version: 1,
  parameters: WATER_READINGS,
  outputs: [
    { name: 'carbonate_alkalinity', unit: 'mg/L as CaCO3' },
    { name: 'ionic_strength', unit: 'mol/L' },
    { name: 'ph_saturation', unit: 'pH' },
    { name: 'lsi', unit: '1' },
    { name: 'calcite_si', unit: '1' },
    { name: 'pco2', unit: 'atm' },
    { name: 'total_carbonate', unit: 'mmol/L' },
    { name: 'alkalinity', unit: 'mmol/L' },
    { name: 'tds', unit: 'mg/L' },
    { name: 'sodium', unit: 'mmol/L' },
    ...MAIN_SPECIES.map(([name]) => ({ name, unit: 'mmol/L' })),
  ],
  source: CALCITE_SOURCE,
  equation: String.raw`\mathrm{TA} = \mathrm{Alk}(\mathrm{pH}) - \mathrm{Alk}(4.5),\quad \mathrm{Alk} = [\mathrm{HCO_3^-}] + 2[\mathrm{CO_3^{2-}}] + [\mathrm{H_2Cy^-}] + \dots + [\mathrm{B(OH)_4^-}] + [\mathrm{OH^-}] - [\mathrm{H^+}],\quad \mathrm{SI} = \log_{10} \frac{a_{\mathrm{Ca}}\, a_{\mathrm{CO_3}}}{K_s}`,
  solve: (...readings: WaterReadings) => {
    const water = waterFromReadings(readings)
    if (isFailure(water)) return water
    const dry = water.totals.calcium > 0 ? undefined : noCalcium()
    const lsi = langelierIndex(water)
    return [
      water.carbonateAlkalinity * PER_EQUIVALENT,
      water.ionicStrength,
      dry ?? water.ph - lsi,
      dry ?? lsi,
      dry ?? water.calciteIndex,
      water.pco2,
      water.totals.carbonate * 1000,
      water.totals.alkalinity * 1000,
      dissolvedSolids(water) * 1000,
      water.totals.sodium * 1000,
      ...mainIndex.map((i) => (water.species[i] ?? Number.NaN) * 1000),
    ]
  },
  checks: [
    {
      args: [7.8, 30, 200, 200, 733.54, undefined, 50, 0],
      output: 'carbonate_alkalinity',
      expect: 183.83,
      tolerance: 1,
      where: `${REFERENCE}, water 30`,
    },
    {
      args: [7.8, 15, 120, 400, 3467.1, undefined, 0, 50],
      output: 'calcite_si',
      expect: 0.2811,
      tolerance: 0.05,
      where: `${REFERENCE}, water 251`,
    },
    {
      args: [7.8, 15, 120, 400, 3467.1, undefined, 0, 50],
      output: 'pco2',
      expect: 0.0015871,
      tolerance: 0.00008,
      where: `${REFERENCE}, water 251`,
    },
  ],
}

/** What the water would come to: with calcite, with air, at another pH, in the cold, at the cell's plates. */
const WATER_EQUILIBRIA: Solve = {
  name: 'WATER_EQUILIBRIA',
  version: 2,
  parameters: [
    ...WATER_READINGS,
    { name: 'target_lsi', unit: '1', min: -5, max: 5, optional: true },
    temperatureLow,
    { name: 'air_co2', unit: 'ppm (air)', min: 50, max: 100_000, optional: true },
  ],
  outputs: [
    { name: 'ccpp', unit: 'mg/L as CaCO3' },
    { name: 'ph_for_target_lsi', unit: 'pH' },
    { name: 'ph_against_air', unit: 'pH' },
    { name: 'lsi_cold', unit: '1' },
    { name: 'lsi_at_cell', unit: '1' },
    { name: 'ph_after_ccpp', unit: 'pH' },
    { name: 'calcite_si_against_air', unit: '1' },
  ],
  source: CALCITE_SOURCE,
  equation: String.raw`\mathrm{CCPP} = x:\ \mathrm{SI}(\mathrm{Ca} - x,\ C_T - x,\ \mathrm{Alk} - 2x) = 0`,
  solve: (...args: readonly [...WaterReadings, Maybe, Maybe, Maybe]) => {
    const readings = args.slice(0, WATER_READINGS.length) as unknown as WaterReadings
    const [targetLsi, coldest, airCo2] = args.slice(WATER_READINGS.length) as [Maybe, Maybe, Maybe]
    const water = waterFromReadings(readings)
    if (isFailure(water)) return water
    const calcite = calciteEquilibrium(water)
    const forLsi = whenGiven(targetLsi, 'target_lsi', (wanted) => waterForIndex(water, wanted))
    const aired = whenGiven(airCo2, 'air_co2', (ppm) => waterAgainstAir(water, ppm))
    const cold = whenGiven(coldest, 'temperature_low', (low) => waterFromReadings(chilled(readings, low)))
    const atCell = waterAtPh(water, water.ph + 1)
    return [
      isFailure(calcite) ? calcite : calcite.precipitated * PER_CALCIUM,
      of(forLsi, ph),
      of(aired, ph),
      of(cold, index),
      of(atCell, index),
      isFailure(calcite) ? calcite : calcite.water.ph,
      of(aired, calciteIndex),
    ]
  },
  checks: [
    {
      args: [7.8, 15, 120, 400, 3467.1, undefined, 0, 50],
      output: 'ccpp',
      expect: 12.194,
      tolerance: 2,
      where: `${REFERENCE}, water 251`,
    },
    {
      args: [8, 25, 200, 99.9, 0, undefined, 0, 0],
      output: 'ccpp',
      expect: 16,
      tolerance: 2,
      where: 'tidywater (open drinking-water package), tests for CCPP: pH 8, alkalinity 200, 40 mg/L Ca, printed 16',
    },
    {
      args: [
        7.5,
        15,
        40,
        800,
        1434.4,
        undefined,
        0,
        0,
        undefined,
        undefined,
        undefined,
        undefined,
        undefined,
        undefined,
        416.87,
      ],
      output: 'ph_against_air',
      expect: 7.9352,
      tolerance: 0.06,
      where: `${REFERENCE}, air equilibrium of water 101`,
    },
  ],
}

function noCalcium(): Failure {
  return fail('out_of_range', 'calcium_hardness', { value: 0, min: 1, max: 5_000 })
}

function whenGiven(value: Maybe, name: string, solve: (given: number) => Water | Failure): Water | Failure {
  return value === undefined ? fail('missing', name) : solve(value)
}

function of(water: Water | Failure, read: (water: Water) => Result): Result {
  return isFailure(water) ? water : read(water)
}

const ph = (water: Water) => water.ph
const index = (water: Water): Result => (water.totals.calcium > 0 ? langelierIndex(water) : noCalcium())
const calciteIndex = (water: Water): Result => (water.totals.calcium > 0 ? water.calciteIndex : noCalcium())

/** The same readings at another temperature: pH and alkalinity as read. */
function chilled(readings: WaterReadings, temperature: number): WaterReadings {
  const [first, , ...rest] = readings
  return [first, temperature, ...rest]
}

export const WATER_FUNCTIONS: readonly LockedFunction[] = [
  WATER,
  WATER_EQUILIBRIA,
  WATER_AFTER,
  WATER_AFTER_DILUTION,
  BALANCE_DOSE,
  CALCIUM_DOSE,
  ...SATURATION_FUNCTIONS,
]
