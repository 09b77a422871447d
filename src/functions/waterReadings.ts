import { type Failure, fail, isFailure } from '../chemistry/failure'
import { type Measured, measuredWater } from '../chemistry/measuredWater'
import { MOLAR_MASS } from '../chemistry/molarMass'
import { outside } from '../chemistry/outside'
import type { Water } from '../chemistry/water'
import type { Parameter } from './define'

/** mg/L as CaCO3 in one eq/L of alkalinity, and in one mol/L of calcium */
export const PER_EQUIVALENT = 1000 * (MOLAR_MASS.calciumCarbonate / 2)
export const PER_CALCIUM = 1000 * MOLAR_MASS.calciumCarbonate
/** mg/L in one mol/L; IUPAC 2021 abridged atomic weights */
export const PER_SALT = 1000 * MOLAR_MASS.sodiumChloride
export const PER_CHLORIDE = 1000 * MOLAR_MASS.chloride
export const PER_CYANURIC_ACID = 1000 * MOLAR_MASS.cyanuricAcid
export const PER_CHLORINE = 1000 * MOLAR_MASS.chlorine
export const PER_BORON = 10_810
export const PER_MAGNESIUM = 24_305
export const PER_SULFATE = 96_056
export const ZERO_CELSIUS = 273.15

/** Above this much free chlorine the dyes of the alkalinity test err, mg/L (common practice; trade press). */
const MOST_CHLORINE = 10

export const BOTTLES = ['plain', 'chlorine_counted', 'thiosulfate'] as const
export type Bottle = (typeof BOTTLES)[number]

/** The readings of a water, in the order that every whole-water function takes them. */
export const WATER_READINGS: readonly Parameter[] = [
  { name: 'ph', unit: 'pH', min: 5, max: 11 },
  { name: 'temperature', unit: '°C', min: 0, max: 45 },
  { name: 'total_alkalinity', unit: 'mg/L as CaCO3', min: 0, max: 2_000 },
  { name: 'calcium_hardness', unit: 'mg/L as CaCO3', min: 0, max: 5_000 },
  { name: 'salt', unit: 'mg/L as NaCl', min: 0, max: 40_000, fitted: [0, 11_000] },
  { name: 'chloride', unit: 'mg/L', min: 0, max: 25_000, fitted: [0, 7_000], optional: true },
  { name: 'cyanuric_acid', unit: 'mg/L', min: 0, max: 1_000 },
  { name: 'borate', unit: 'mg/L as B', min: 0, max: 250, fitted: [0, 100] },
  { name: 'magnesium', unit: 'mg/L', min: 0, max: 2_000, optional: true },
  { name: 'sulfate', unit: 'mg/L', min: 0, max: 5_000, optional: true },
  { name: 'free_chlorine', unit: 'mg/L as Cl2', min: 0, max: 1_000, optional: true },
  { name: 'alkalinity_bottle', unit: 'choice', choices: BOTTLES, optional: true },
]

export type WaterReadings = readonly [
  ph: number,
  temperature: number,
  totalAlkalinity: number,
  calciumHardness: number,
  salt: number,
  chloride: number | undefined,
  cyanuricAcid: number,
  borate: number,
  magnesium: number | undefined,
  sulfate: number | undefined,
  freeChlorine: number | undefined,
  bottle: Bottle | undefined,
]

/** Several functions ask for the water of the same readings, one after another. */
let last: { readings: readonly unknown[]; water: Water | Failure } = {
  readings: [],
  water: fail('missing', 'ph'),
}

/**
 * Water from readings in contract units. `chloride` not taken is salt / 58.443, as the strip reads; magnesium and sulfate not
 * taken are 0. The bottle: plain, chlorine does not count in the alkalinity; chlorine_counted, its base does; thiosulfate,
 * 0.706 mg/L of alkalinity for each mg/L of chlorine was made by the neutralizer and is taken off.
 */
export function waterFromReadings(readings: WaterReadings): Water | Failure {
  if (readings.length !== last.readings.length || readings.some((reading, i) => reading !== last.readings[i])) {
    const measured = measuredFromReadings(readings)
    last = { readings: [...readings], water: isFailure(measured) ? measured : measuredWater(measured) }
  }
  return last.water
}

function measuredFromReadings(readings: WaterReadings): Measured | Failure {
  for (let i = 0; i < WATER_READINGS.length; i++) {
    const p = WATER_READINGS[i]
    const value = readings[i]
    if (!p || p.unit === 'choice' || value === undefined) continue
    const refused = outside(p.name, Number(value), p.min ?? 0, p.max ?? 0)
    if (refused) return refused
  }
  const [ph, temperature, alkalinity, calcium, salt, chloride, cyanuric, borate, magnesium, sulfate, chlorine, bottle] =
    readings
  if (chlorine === undefined && bottle !== undefined && bottle !== 'plain') return fail('missing', 'free_chlorine')
  const free = chlorine ?? 0
  if (free > MOST_CHLORINE) return fail('out_of_range', 'free_chlorine', { value: free, min: 0, max: MOST_CHLORINE })
  const made = bottle === 'thiosulfate' ? free / PER_CHLORINE : 0
  const titrated = alkalinity / PER_EQUIVALENT - made
  if (titrated < 0) return fail('no_such_water', 'total_alkalinity', { total: alkalinity, left: titrated })
  return {
    ph,
    temperature: temperature + ZERO_CELSIUS,
    titratedAlkalinity: titrated,
    calcium: calcium / PER_CALCIUM,
    magnesium: (magnesium ?? 0) / PER_MAGNESIUM,
    sulfate: (sulfate ?? 0) / PER_SULFATE,
    chloride: chloride === undefined ? salt / PER_SALT : chloride / PER_CHLORIDE,
    borate: borate / PER_BORON,
    cyanurate: cyanuric / PER_CYANURIC_ACID,
    chlorine: bottle === 'chlorine_counted' ? free / PER_CHLORINE : 0,
  }
}
