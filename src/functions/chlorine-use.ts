import { batherDemand, breakpointDose } from '../chemistry/breakpoint'
import { contactTime, ORGANISMS } from '../chemistry/contactTime'
import type { HoclModel } from '../chemistry/cyanurateModels'
import { type Failure, isFailure } from '../chemistry/failure'
import { chlorineLeftInSun } from '../chemistry/sunLoss'
import {
  CYANURIC_ACID,
  chlorineInMoles,
  chlorineReadingsOutside,
  FREE_CHLORINE,
  HOCL_MODEL,
  PH,
  TEMPERATURE,
} from './chlorineReadings'
import type { LockedFunction } from './define'
import { VOLUME } from './volume'
import { PER_CHLORINE } from './waterReadings'

function leftInSun(
  ph: number,
  celsius: number,
  freeChlorine: number,
  cyanuricAcid: number,
  hours: number,
  model: HoclModel,
): number | Failure {
  const refused = chlorineReadingsOutside(freeChlorine, cyanuricAcid, celsius)
  if (refused) return refused
  const [T, chlorine, cyanurate] = chlorineInMoles(freeChlorine, cyanuricAcid, celsius)
  const left = chlorineLeftInSun(model, T, ph, chlorine, cyanurate, hours)
  return isFailure(left) ? left : PER_CHLORINE * left
}

/** What uses chlorine up, and how long it has to stand. */
export const CHLORINE_USE_FUNCTIONS: readonly LockedFunction[] = [
  {
    name: 'BREAKPOINT_DOSE',
    version: 1,
    parameters: [
      { name: 'combined_chlorine', unit: 'mg/L as Cl2', min: 0, max: 50 },
      { name: 'ammonia', unit: 'mg/L as N', min: 0, max: 50 },
    ],
    result: { name: 'breakpoint_dose', unit: 'mg/L as Cl2' },
    source:
      'Applications of Environmental Aquatic Chemistry (CRC), ch. 4, p. 143: 7.6 mg of Cl2 a mg of N; monochloramine holds two of its three parts.',
    equation: String.raw`D = 0.5\, CC + 7.6\, N`,
    evaluate: breakpointDose,
    checks: [
      { args: [0, 1], expect: 7.6, tolerance: 0.01, where: '3 × 70.906 / (2 × 14.007) = 7.593, printed 7.6' },
      {
        args: [1, 0],
        expect: 0.5,
        tolerance: 1e-12,
        where: 'stoichiometry 2 NH2Cl + HOCl = N2 + 3 HCl: one Cl2 for two',
      },
    ],
  },
  {
    name: 'BATHER_DEMAND',
    version: 1,
    parameters: [
      { name: 'bathers', unit: '1', min: 0, max: 100_000 },
      VOLUME,
      { name: 'chlorine_per_bather', unit: 'g', min: 0, max: 50 },
    ],
    result: { name: 'chlorine_demand', unit: 'mg/L as Cl2' },
    source:
      'Berg, Fang & Tang, J. Water Health 17 (2019) 227: 4.12 g a bather; Bradford, Int. J. Aquatic Res. Educ. (2014): median 5.5 g.',
    equation: String.raw`D = \frac{n\, g}{V}`,
    evaluate: batherDemand,
    checks: [{ args: [10, 50, 4.12], expect: 0.824, tolerance: 1e-9, where: 'by hand: 41.2 g in 50 m³' }],
  },
  {
    name: 'CHLORINE_LEFT_IN_SUN',
    version: 1,
    parameters: [
      PH,
      TEMPERATURE,
      FREE_CHLORINE,
      CYANURIC_ACID,
      { name: 'hours', unit: 'h', min: 0, max: 24 },
      HOCL_MODEL,
    ],
    result: { name: 'free_chlorine', unit: 'mg/L as Cl2' },
    source:
      'Nowell & Hoigné, Water Research 26 (1992) 593-598: surface, clear summer noon, 47° N. Bound chlorine: half-life of hours by common practice, from memory.',
    equation: String.raw`\frac{dC}{dt} = -(2 \times 10^{-4}\,[HOCl] + 1.2 \times 10^{-3}\,[OCl^-] + 1.6 \times 10^{-5}\,C_{bound})`,
    evaluate: leftInSun,
    checks: [
      {
        args: [8, 25, 2, 0, 0.2, 'wahman_2019'],
        expect: 1,
        tolerance: 0.02,
        where: 'half-life 12 min at pH 8, Nowell & Hoigné, abstract',
      },
      {
        args: [5, 25, 2, 0, 1, 'wahman_2019'],
        expect: 1,
        tolerance: 0.04,
        where: 'half-life 60 min at pH 5, Nowell & Hoigné, abstract',
      },
      {
        args: [7.5, 25, 3, 40, 7, 'wahman_2019'],
        expect: 1.5,
        tolerance: 0.15,
        where: 'common practice, no source: with 25 to 50 mg/L of stabilizer the half-life is 6 to 8 h',
      },
    ],
  },
  {
    name: 'CONTACT_TIME',
    version: 1,
    parameters: [
      { name: 'organism', unit: 'choice', choices: ORGANISMS },
      { ...FREE_CHLORINE, max: 100 },
      { ...CYANURIC_ACID, max: 15 },
      { name: 'ph', unit: 'pH', min: 6.5, max: 7.5 },
      { name: 'temperature', unit: '°C', min: 25, max: 45 },
    ],
    result: { name: 'contact_time', unit: 'h' },
    source:
      'CDC recommendations for faecal incidents and hyperchlorination, as county health departments quote them; rows with stabilizer from memory.',
    equation: String.raw`t = \text{the row at or under } FC`,
    evaluate: contactTime,
    checks: [
      {
        args: ['cryptosporidium', 20, 0, 7.5, 25],
        expect: 12.75,
        tolerance: 1e-9,
        where: 'Clayton County Public Health, response to diarrhoea: 20 mg/L for 12.75 h',
      },
      {
        args: ['cryptosporidium', 10, 0, 7.5, 25],
        expect: 25.5,
        tolerance: 1e-9,
        where: 'Clayton County Public Health, response to diarrhoea: 10 mg/L for 25.5 h',
      },
      {
        args: ['giardia', 1, 0, 7.5, 25],
        expect: 0.75,
        tolerance: 1e-9,
        where: 'germ inactivation times, 1 mg/L, pH 7.5, 25 °C, quoted from CDC: Giardia 45 min',
      },
    ],
  },
]
