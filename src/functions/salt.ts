import { concentrationAfterMass, massForRise } from '../chemistry/massForRise'
import {
  conductivityAt25,
  conductivityOfSalt,
  FITTED_CONDUCTIVITY,
  FITTED_NACL,
  MOST_CONDUCTIVITY,
  MOST_NACL,
  saltFromConductivity,
} from '../chemistry/saltConductivity'
import { potassiumChlorideForSalt, saltFromChloride } from '../chemistry/saltFromChloride'
import { waterLossFromSalt } from '../chemistry/waterLoss'
import type { LockedFunction, Parameter } from './define'
import { VOLUME } from './volume'

const saltOf = (name: string, min = 0): Parameter => ({ name, unit: 'mg/L as NaCl', min, max: 100_000 })
const purity: Parameter = { name: 'salt_purity', unit: '1', min: 0.05, max: 1, optional: true }

const CONDUCTIVITY_SOURCE =
  'Molar conductivity of NaCl at 25 °C: CRC Handbook of Chemistry and Physics (from memory) to 0.1 mol/L, Miller, J. Phys. Chem. 70 (1966) (from memory) at 0.2; linear in √c between.'

/** Salt, conductivity, and what lost salt says about lost water. */
export const SALT_FUNCTIONS: readonly LockedFunction[] = [
  {
    name: 'SALT_MASS',
    version: 1,
    parameters: [VOLUME, saltOf('salt'), saltOf('target_salt'), purity],
    result: { name: 'salt_mass', unit: 'kg' },
    source: 'Mass balance: 1000 mg/L in 1 m³ is 1 kg.',
    equation: String.raw`m = \frac{\max(0,\, c_{target} - c)\, V}{p}`,
    evaluate: (v: number, now: number, wanted: number, pure: number | undefined) =>
      massForRise('salt', v, now, wanted, pure ?? 1, 100_000),
    checks: [
      {
        args: [15_000 * 0.003785411784, 0, 1000],
        expect: 125.18 * 0.45359237,
        tolerance: 0.003,
        where: '125.18 lb raise 15 000 US gal by 1000 mg/L (definitions of lb and gal)',
      },
      { args: [50, 3400, 3200], expect: 0, tolerance: 0, where: 'enough salt already: none is needed' },
    ],
  },
  {
    name: 'SALT_AFTER_MASS',
    version: 1,
    parameters: [VOLUME, saltOf('salt'), { name: 'salt_mass', unit: 'kg', min: 0, max: 1_000_000 }, purity],
    result: { name: 'salt', unit: 'mg/L as NaCl' },
    source: 'Mass balance: 1 kg in 1 m³ is 1000 mg/L.',
    equation: String.raw`c_1 = c_0 + \frac{m\, p}{V}`,
    evaluate: (v: number, now: number, mass: number, pure: number | undefined) =>
      concentrationAfterMass('salt', v, now, mass, pure ?? 1, 100_000),
    checks: [
      {
        args: [3.785411784, 500, 8.3454 * 0.45359237],
        expect: 1500,
        tolerance: 0.02,
        where: '8.3454 lb raise 1000 US gal by 1000 mg/L (definitions of lb and gal)',
      },
    ],
  },
  {
    name: 'SALT_FROM_CHLORIDE',
    version: 1,
    parameters: [{ name: 'chloride', unit: 'mg/L', min: 0, max: 60_000 }],
    result: { name: 'salt', unit: 'mg/L as NaCl' },
    source: 'Standard atomic weights (IUPAC 2021): NaCl 58.443, Cl 35.453 g/mol.',
    equation: String.raw`c_{NaCl} = 1.6485\, c_{Cl}`,
    evaluate: saltFromChloride,
    checks: [
      {
        args: [1941],
        expect: 3200,
        tolerance: 1,
        where: '3200 mg/L of NaCl hold 1941 mg/L of chloride (chloride is 0.60663 of NaCl)',
      },
    ],
  },
  {
    name: 'SALT_FROM_CONDUCTIVITY',
    version: 1,
    parameters: [
      { name: 'conductivity', unit: 'µS/cm', min: 0, max: MOST_CONDUCTIVITY, fitted: [0, FITTED_CONDUCTIVITY] },
    ],
    result: { name: 'salt', unit: 'mg/L as NaCl' },
    source: CONDUCTIVITY_SOURCE,
    equation: String.raw`\kappa = \Lambda(\sqrt{c})\, c`,
    evaluate: saltFromConductivity,
    checks: [
      {
        args: [1185],
        expect: 584.43,
        tolerance: 1,
        where: 'textbook exercise: 0.010 mol/L of NaCl at 298 K, 0.1185 S/m',
      },
      {
        args: [5553],
        expect: 2922.15,
        tolerance: 4,
        where: 'textbook exercise: 0.050 mol/L of NaCl at 298 K, 0.5553 S/m',
      },
    ],
  },
  {
    name: 'CONDUCTIVITY_OF_SALT',
    version: 1,
    parameters: [{ name: 'salt', unit: 'mg/L as NaCl', min: 0, max: MOST_NACL, fitted: [0, FITTED_NACL] }],
    result: { name: 'conductivity', unit: 'µS/cm' },
    source: CONDUCTIVITY_SOURCE,
    equation: String.raw`\kappa = \Lambda(\sqrt{c})\, c`,
    evaluate: conductivityOfSalt,
    checks: [
      {
        args: [5844.3],
        expect: 10_674,
        tolerance: 10,
        where: 'textbook exercise: 0.100 mol/L of NaCl at 298 K, 1.0674 S/m',
      },
      {
        args: [1168.86],
        expect: 2315,
        tolerance: 3,
        where: 'textbook exercise: 0.020 mol/L of NaCl at 298 K, 0.2315 S/m',
      },
    ],
  },
  {
    name: 'CONDUCTIVITY_AT_25',
    version: 1,
    parameters: [
      { name: 'conductivity', unit: 'µS/cm', min: 0, max: 1_000_000 },
      { name: 'temperature', unit: '°C', min: 0, max: 50 },
    ],
    result: { name: 'conductivity', unit: 'µS/cm' },
    source:
      "NaCl curve of IEC 60746-3, as printed in a conductivity meter's manual: 0.542 at 0 °C, 1.531 at 50 °C; parabola between.",
    equation: String.raw`\kappa_{25} = \frac{\kappa}{1 + 0.4945\,t + 0.0365\,t^2},\quad t = \frac{T - 25}{25}`,
    evaluate: conductivityAt25,
    checks: [
      {
        args: [542, 0],
        expect: 1000,
        tolerance: 1,
        where: "a meter's manual, table of conductivity ratios of NaCl: 0.542 at 0 °C",
      },
      {
        args: [1310, 40],
        expect: 1000,
        tolerance: 5,
        where: 'IEC 60746-3, table for NaCl (from memory): 1.31 at 40 °C',
      },
      {
        args: [720, 10],
        expect: 1000,
        tolerance: 8,
        where: 'IEC 60746-3, table for NaCl (from memory): 0.72 at 10 °C',
      },
    ],
  },
  {
    name: 'POTASSIUM_CHLORIDE_MASS',
    version: 1,
    parameters: [{ name: 'salt_mass', unit: 'kg', min: 0, max: 1_000_000 }],
    result: { name: 'potassium_chloride_mass', unit: 'kg' },
    source: 'Standard atomic weights (IUPAC 2021): KCl 74.551, NaCl 58.443 g/mol; equal chloride.',
    equation: String.raw`m_{KCl} = 1.2756\, m_{NaCl}`,
    evaluate: potassiumChlorideForSalt,
    checks: [{ args: [100], expect: 127.6, tolerance: 0.05, where: 'trade factor 1.276' }],
  },
  {
    name: 'WATER_LOSS_FROM_SALT',
    version: 1,
    parameters: [
      VOLUME,
      saltOf('salt_before', 10),
      saltOf('salt', 10),
      { name: 'days_between', unit: 'day', min: 0.1, max: 3_650 },
    ],
    result: { name: 'water_loss', unit: 'L/day' },
    source: 'Mass balance of a well mixed pool that is topped up with salt-free water.',
    equation: String.raw`q = \frac{V}{t} \ln\frac{c_0}{c}`,
    evaluate: waterLossFromSalt,
    checks: [
      {
        args: [56.8, 3200, 2900, 14],
        expect: 400,
        tolerance: 1,
        where: 'by hand: 56 800 L × ln(3200 / 2900) / 14 = 399.4',
      },
    ],
  },
]
