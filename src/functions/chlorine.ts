import { type ChlorineEquilibrium, chlorineEquilibrium, chlorineForHocl } from '../chemistry/chlorineEquilibrium'
import { HOCL_MODELS, type HoclModel } from '../chemistry/cyanurateModels'
import { type Failure, fail, isFailure } from '../chemistry/failure'
import { massForRise } from '../chemistry/massForRise'
import { outside } from '../chemistry/outside'
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

const MODELS =
  'Wahman & Alexander, Environ. Eng. Sci. 36 (2019) 283-294, with pK6 by Wahman (2018) and HOCl by Morris (1966), 5 to 35 °C; O’Brien, Morris & Butler (1974), 25 °C. Both at zero ionic strength.'

/** Every output of CHLORINE; those of a model that gives no verdict fail, the others stand. */
function chlorine(
  ph: number,
  celsius: number,
  freeChlorine: number,
  cyanuricAcid: number,
  model: HoclModel,
): readonly (number | Failure)[] | Failure {
  const refused = chlorineReadingsOutside(freeChlorine, cyanuricAcid, celsius)
  if (refused) return refused
  const [T, total, cyanurate] = chlorineInMoles(freeChlorine, cyanuricAcid, celsius)
  const chosen = chlorineEquilibrium(model, T, ph, total, cyanurate)
  const older = model === 'obrien_1974' ? chosen : chlorineEquilibrium('obrien_1974', T, ph, total, cyanurate)
  const milligrams = (from: ChlorineEquilibrium | Failure, moles: (e: ChlorineEquilibrium) => number) =>
    isFailure(from) ? from : PER_CHLORINE * moles(from)
  return [
    milligrams(chosen, (e) => e.hocl),
    milligrams(chosen, (e) => e.ocl),
    milligrams(chosen, (e) => e.hocl + e.ocl),
    milligrams(chosen, (e) => e.bound[0] + e.bound[1] + e.bound[2]),
    isFailure(chosen) ? chosen : chosen.hoclShare,
    milligrams(chosen, (e) => e.bound[0]),
    milligrams(chosen, (e) => e.bound[1]),
    milligrams(chosen, (e) => e.bound[2]),
    milligrams(older, (e) => e.hocl),
  ]
}

function freeChlorineForHocl(
  wanted: number,
  ph: number,
  celsius: number,
  cyanuricAcid: number,
  model: HoclModel,
  wantedBy: HoclModel | undefined,
): number | Failure {
  if (wantedBy !== undefined && wantedBy !== model) {
    return fail('mixed_models', 'target_hocl', { wanted: wantedBy, model })
  }
  const refused = chlorineReadingsOutside(0, cyanuricAcid, celsius) ?? outside('target_hocl', wanted, 0, 20)
  if (refused) return refused
  const [T, hocl, cyanurate] = chlorineInMoles(wanted, cyanuricAcid, celsius)
  const total = chlorineForHocl(model, T, ph, hocl, cyanurate)
  return isFailure(total) ? total : PER_CHLORINE * total
}

/** Active chlorine and the stabilizer that holds it. */
export const CHLORINE_FUNCTIONS: readonly LockedFunction[] = [
  {
    name: 'CHLORINE',
    version: 1,
    parameters: [PH, TEMPERATURE, FREE_CHLORINE, CYANURIC_ACID, HOCL_MODEL],
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
      PH,
      TEMPERATURE,
      CYANURIC_ACID,
      HOCL_MODEL,
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
    parameters: [CYANURIC_ACID, { ...FREE_CHLORINE, min: 0.01 }],
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
    parameters: [FREE_CHLORINE, { ...CYANURIC_ACID, min: 0.1 }],
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
      CYANURIC_ACID,
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
]
