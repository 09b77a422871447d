import { batherDemand, breakpointDose } from '../chemistry/breakpoint'
import { type ChlorineEquilibrium, chlorineEquilibrium, chlorineForHocl } from '../chemistry/chlorineEquilibrium'
import { contactTime, ORGANISMS } from '../chemistry/contactTime'
import { HOCL_MODELS, type HoclModel } from '../chemistry/cyanurateModels'
import { type Failure, fail, isFailure } from '../chemistry/failure'
import { massForRise } from '../chemistry/massForRise'
import { MOLAR_MASS } from '../chemistry/molarMass'
import { outside } from '../chemistry/outside'
import { chlorineLeftInSun } from '../chemistry/sunLoss'
import type { LockedFunction, Parameter } from './define'
import { VOLUME } from './volume'

const ph: Parameter = { name: 'ph', unit: 'pH', min: 5, max: 10, fitted: [6.5, 8.5] }
const temperature: Parameter = { name: 'temperature', unit: '°C', min: 0, max: 45 }
const freeChlorine: Parameter = { name: 'free_chlorine', unit: 'mg/L as Cl2', min: 0, max: 200 }
const cyanuricAcid: Parameter = { name: 'cyanuric_acid', unit: 'mg/L', min: 0, max: 1_000 }
const hoclModel: Parameter = { name: 'hocl_model', unit: 'choice', choices: HOCL_MODELS }

const kelvin = (celsius: number) => celsius + 273.15
const moles = (milligrams: number) => milligrams / 1_000 / MOLAR_MASS.chlorine
const milligrams = (moles: number) => moles * 1_000 * MOLAR_MASS.chlorine
const cyanurate = (milligrams: number) => milligrams / 1_000 / MOLAR_MASS.cyanuricAcid

const MODELS =
  'Wahman & Alexander, Environ. Eng. Sci. 36 (2019) 283-294, with pK6 by Wahman (2018) and HOCl by Morris (1966), 5 to 35 °C; O’Brien, Morris & Butler (1974), 25 °C. Both at zero ionic strength.'

/** What is read and used on both sides of the border, in mg/L and °C. */
function waterRefused(fc: number, cya: number, celsius: number): Failure | undefined {
  return (
    outside('free_chlorine', fc, 0, 200) ??
    outside('cyanuric_acid', cya, 0, 1_000) ??
    outside('temperature', celsius, 0, 45)
  )
}

function chlorine(
  acidity: number,
  celsius: number,
  fc: number,
  cya: number,
  model: HoclModel,
): readonly (number | Failure)[] | Failure {
  const refused = waterRefused(fc, cya, celsius)
  if (refused) return refused
  const by = (m: HoclModel) => chlorineEquilibrium(m, kelvin(celsius), acidity, moles(fc), cyanurate(cya))
  const chosen = by(model)
  const older = model === 'obrien_1974' ? chosen : by('obrien_1974')
  const read = (from: ChlorineEquilibrium | Failure, value: (e: ChlorineEquilibrium) => number) =>
    isFailure(from) ? from : value(from)
  return [
    read(chosen, (e) => milligrams(e.hocl)),
    read(chosen, (e) => milligrams(e.ocl)),
    read(chosen, (e) => milligrams(e.hocl + e.ocl)),
    read(chosen, (e) => milligrams(e.bound[0] + e.bound[1] + e.bound[2])),
    read(chosen, (e) => e.hoclShare),
    read(chosen, (e) => milligrams(e.bound[0])),
    read(chosen, (e) => milligrams(e.bound[1])),
    read(chosen, (e) => milligrams(e.bound[2])),
    read(older, (e) => milligrams(e.hocl)),
  ]
}

function freeChlorineForHocl(
  wanted: number,
  acidity: number,
  celsius: number,
  cya: number,
  model: HoclModel,
  wantedBy: HoclModel | undefined,
): number | Failure {
  if (wantedBy !== undefined && wantedBy !== model)
    return fail('mixed_models', 'target_hocl', { wanted: wantedBy, model })
  const refused = waterRefused(0, cya, celsius) ?? outside('target_hocl', wanted, 0, 20)
  if (refused) return refused
  const found = chlorineForHocl(model, kelvin(celsius), acidity, moles(wanted), cyanurate(cya))
  return isFailure(found) ? found : milligrams(found)
}

function leftInSun(
  acidity: number,
  celsius: number,
  fc: number,
  cya: number,
  hours: number,
  model: HoclModel,
): number | Failure {
  const refused = waterRefused(fc, cya, celsius)
  if (refused) return refused
  const left = chlorineLeftInSun(model, kelvin(celsius), acidity, moles(fc), cyanurate(cya), hours)
  return isFailure(left) ? left : milligrams(left)
}

/** Active chlorine, the stabilizer that holds it, and what uses it up. */
export const CHLORINE_FUNCTIONS: readonly LockedFunction[] = [
  {
    name: 'CHLORINE',
    version: 1,
    parameters: [ph, temperature, freeChlorine, cyanuricAcid, hoclModel],
    outputs: [
      { name: 'hocl', unit: 'mg/L as Cl2' },
      { name: 'ocl', unit: 'mg/L as Cl2' },
      { name: 'unbound_chlorine', unit: 'mg/L as Cl2' },
      { name: 'bound_chlorine', unit: 'mg/L as Cl2' },
      { name: 'hocl_share', unit: '1' },
      { name: 'bound_mono', unit: 'mg/L as Cl2' },
      { name: 'bound_di', unit: 'mg/L as Cl2' },
      { name: 'bound_tri', unit: 'mg/L as Cl2' },
      { name: 'hocl_obrien', unit: 'mg/L as Cl2' },
    ],
    source: MODELS,
    equation: String.raw`C_T = \alpha x + Cy_T \frac{m x + 2 d x^2 + 3 t x^3}{u + m x + d x^2 + t x^3},\quad x = [HOCl]`,
    solve: chlorine,
    checks: [
      {
        args: [7, 25, 2, (2 * 129.075) / 2 / 70.906, 'wahman_2019'],
        output: 'unbound_chlorine',
        expect: 0.9,
        tolerance: 0.03,
        where: 'Wahman & Alexander 2019, abstract: 2 mg/L as dichlor, pH 7.0, 25 °C',
      },
      {
        args: [7, 5, 2, (2 * 129.075) / 2 / 70.906, 'wahman_2019'],
        output: 'unbound_chlorine',
        expect: 0.6,
        tolerance: 0.03,
        where: 'Wahman & Alexander 2019, abstract: 2 mg/L as dichlor, pH 7.0, 5 °C',
      },
      {
        args: [7.537, 25, 1, 0, 'wahman_2019'],
        output: 'hocl_share',
        expect: 0.5,
        tolerance: 0.001,
        where: 'Morris 1966: pKa 7.537 at 25 °C, where half is HOCl',
      },
      {
        args: [7.5, 29.444, 1, 0, 'wahman_2019'],
        output: 'hocl',
        expect: 0.47,
        tolerance: 0.035,
        where: 'trade magazine, 2019, committee summary: 1 mg/L, pH 7.5, 85 °F, no stabilizer; another pKa (7.45)',
      },
    ],
  },
  {
    name: 'FREE_CHLORINE_FOR_HOCL',
    version: 1,
    parameters: [
      { name: 'target_hocl', unit: 'mg/L as Cl2', min: 0, max: 20 },
      ph,
      temperature,
      cyanuricAcid,
      hoclModel,
      { name: 'target_hocl_model', unit: 'choice', choices: HOCL_MODELS, optional: true },
    ],
    result: { name: 'free_chlorine', unit: 'mg/L as Cl2' },
    source: MODELS,
    equation: String.raw`C_T = \alpha x + Cy_T \frac{m x + 2 d x^2 + 3 t x^3}{u + m x + d x^2 + t x^3},\quad x = [HOCl]`,
    evaluate: freeChlorineForHocl,
    checks: [
      {
        args: [0.5, 7.537, 25, 0, 'wahman_2019'],
        expect: 1,
        tolerance: 0.001,
        where: 'Morris 1966: pKa 7.537 at 25 °C, where half is HOCl',
      },
      {
        args: [0.5, 7.54, 10, 0, 'obrien_1974'],
        expect: 1,
        tolerance: 1e-9,
        where: 'O’Brien, Morris & Butler 1974: pKa 7.54, where half is HOCl, held at 25 °C',
      },
    ],
  },
  {
    name: 'CYA_TO_FC_RATIO',
    version: 1,
    parameters: [cyanuricAcid, { ...freeChlorine, min: 0.01 }],
    result: { name: 'cya_to_fc_ratio', unit: '1' },
    source: 'Ratio used by the US Model Aquatic Health Code, 4th edition (2023), where over 45 closes a pool.',
    equation: String.raw`r = \frac{CYA}{FC}`,
    evaluate: (cya: number, fc: number) =>
      outside('cyanuric_acid', cya, 0, 1_000) ?? outside('free_chlorine', fc, 0.01, 200) ?? cya / fc,
    checks: [{ args: [90, 2], expect: 45, tolerance: 1e-12, where: 'code limits 90 and 2 mg/L stand at 45 : 1' }],
  },
  {
    name: 'FC_TO_CYA_SHARE',
    version: 1,
    parameters: [freeChlorine, { ...cyanuricAcid, min: 0.1 }],
    result: { name: 'fc_to_cya_share', unit: '1' },
    source: 'The inverse of the CYA to free chlorine ratio.',
    equation: String.raw`s = \frac{FC}{CYA}`,
    evaluate: (fc: number, cya: number) =>
      outside('free_chlorine', fc, 0, 200) ?? outside('cyanuric_acid', cya, 0.1, 1_000) ?? fc / cya,
    checks: [{ args: [4, 80], expect: 0.05, tolerance: 1e-12, where: 'by hand: 20 : 1 is 5 %' }],
  },
  {
    name: 'CYANURIC_ACID_MASS',
    version: 1,
    parameters: [
      VOLUME,
      cyanuricAcid,
      { name: 'target_cyanuric_acid', unit: 'mg/L', min: 0, max: 1_000 },
      { name: 'stabilizer_purity', unit: '1', min: 0.05, max: 1, optional: true },
    ],
    result: { name: 'cyanuric_acid_mass', unit: 'kg' },
    source: 'Mass balance: 1 mg/L in 1 m³ is 1 g.',
    equation: String.raw`m = \frac{\max(0,\, c_{target} - c)\, V}{p}`,
    evaluate: (volume: number, now: number, wanted: number, purity: number | undefined) =>
      outside('stabilizer_purity', purity ?? 1, 0.05, 1) ??
      massForRise('cyanuric_acid', volume, now, wanted, purity ?? 1, 1_000),
    checks: [
      {
        args: [37.85411784, 20, 30],
        expect: 13.35 * 0.028349523,
        tolerance: 0.0005,
        where: '13.35 oz raise 10 000 US gal by 10 mg/L (definitions of oz and gal); trade tables print 13',
      },
    ],
  },
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
    parameters: [ph, temperature, freeChlorine, cyanuricAcid, { name: 'hours', unit: 'h', min: 0, max: 24 }, hoclModel],
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
      { ...freeChlorine, max: 100 },
      { ...cyanuricAcid, max: 15 },
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
