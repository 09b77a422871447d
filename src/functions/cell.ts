import { cellMayRun, flowMargin } from '../chemistry/cellConditions'
import {
  cellAlkalinity,
  cellHours,
  cellOutputFromCurrent,
  cellOutputMeasured,
  chlorineMade,
} from '../chemistry/electrolysis'
import type { LockedFunction, Parameter } from './define'
import { VOLUME } from './volume'

const cellOutput: Parameter = { name: 'cell_output', unit: 'g/h', min: 0.01, max: 1_000_000 }
const cellSetting: Parameter = { name: 'cell_setting', unit: '1', min: 0.01, max: 1 }
const flow = (name: string): Parameter => ({ name, unit: 'm³/h', min: 0, max: 10_000 })

const FARADAY = 'Faraday’s law, 2 Cl⁻ = Cl2 + 2 e⁻; F 96 485.332 C/mol (SI 2019), Cl2 70.906 g/mol.'
const POUND = 453.59237

/** The cell: what it makes, how long it has to run, whether it may. */
export const CELL_FUNCTIONS: readonly LockedFunction[] = [
  {
    name: 'CELL_OUTPUT_FROM_CURRENT',
    version: 1,
    parameters: [
      { name: 'cell_current', unit: 'A', min: 0, max: 1_000 },
      { name: 'cell_pairs', unit: '1', min: 1, max: 100 },
      { name: 'current_efficiency', unit: '1', min: 0.05, max: 1 },
    ],
    result: { name: 'cell_output', unit: 'g/h' },
    source: FARADAY,
    equation: String.raw`P = \frac{M_{Cl_2}}{2 F}\, I\, n\, \eta`,
    evaluate: cellOutputFromCurrent,
    checks: [
      {
        args: [14.29, 1, 1],
        expect: POUND / 24,
        tolerance: 0.01,
        where: 'handbook figure: 14.29 A through one cell make 1 lb of Cl2 a day',
      },
      {
        args: [1, 1, 1],
        expect: 31.747 / 24,
        tolerance: 1e-4,
        where: 'handbook figure: 31.75 g of Cl2 per ampere and day',
      },
    ],
  },
  {
    name: 'CELL_OUTPUT_MEASURED',
    version: 1,
    parameters: [
      VOLUME,
      { name: 'free_chlorine_dusk', unit: 'mg/L as Cl2', min: 0, max: 50 },
      { name: 'free_chlorine_dawn', unit: 'mg/L as Cl2', min: 0, max: 50 },
      { name: 'dark_hours', unit: 'h', min: 1, max: 24 },
      cellSetting,
    ],
    result: { name: 'cell_output_measured', unit: 'g/h' },
    source: 'Mass balance of a night without sun; what the water used up is not in it. Common practice, no source.',
    equation: String.raw`P = \frac{(C_{dawn} - C_{dusk})\, V}{t\, s}`,
    evaluate: cellOutputMeasured,
    checks: [
      {
        args: [56.8, 2, 4.1, 10, 1],
        expect: 11.93,
        tolerance: 0.01,
        where: 'by hand: 2.1 g/m³ × 56.8 m³ / 10 h; a 12 g/h cell makes 0.21 mg/L an hour there',
      },
    ],
  },
  {
    name: 'CELL_HOURS',
    version: 1,
    parameters: [{ name: 'chlorine_demand', unit: 'mg/L/day', min: 0, max: 100 }, VOLUME, cellOutput, cellSetting],
    result: { name: 'generator_hours', unit: 'h/day' },
    source: 'Mass balance: demand × volume / (output × setting).',
    equation: String.raw`t = \frac{D\, V}{P\, s}`,
    evaluate: cellHours,
    checks: [
      {
        args: [47.93, 37.854118, (4 * POUND) / 24, 1],
        expect: 24,
        tolerance: 0.01,
        where: 'Utah R392-302: 4 lb of chlorine a day for 10 000 US gal; 47.93 mg/L/day',
      },
    ],
  },
  {
    name: 'CHLORINE_MADE',
    version: 1,
    parameters: [
      { ...cellOutput, min: 0 },
      { ...cellSetting, min: 0 },
      { name: 'pump_hours', unit: 'h/day', min: 0, max: 24 },
      VOLUME,
    ],
    result: { name: 'chlorine_made', unit: 'mg/L/day' },
    source: 'Mass balance: output × setting × hours a day / volume.',
    equation: String.raw`C = \frac{P\, s\, t}{V}`,
    evaluate: chlorineMade,
    checks: [
      {
        args: [(2.5 * POUND) / 24, 1, 24, 37.854118],
        expect: 29.96,
        tolerance: 0.01,
        where: 'Utah R392-302: 2.5 lb a day for 10 000 US gal indoors; 29.96 mg/L/day',
      },
    ],
  },
  {
    name: 'CELL_ALKALINITY',
    version: 1,
    parameters: [
      { name: 'chlorine_made', unit: 'mg/L as Cl2', min: 0, max: 1_000 },
      { name: 'chlorine_used', unit: 'mg/L as Cl2', min: 0, max: 1_000 },
    ],
    result: { name: 'alkalinity_change', unit: 'mg/L as CaCO3' },
    source: 'Stoichiometry: NaCl + H2O = NaOCl + H2, and NaOCl back to NaCl in use; 100.087 / 2 / 70.906.',
    equation: String.raw`\Delta Alk = 0.7058\, (C_{made} - C_{used})`,
    evaluate: cellAlkalinity,
    checks: [
      { args: [1, 0], expect: 0.706, tolerance: 0.0005, where: 'one equivalent a mole of Cl2: 50.04 / 70.906' },
      { args: [3, 3], expect: 0, tolerance: 0, where: 'the chlorine that was made and used leaves no base behind' },
    ],
  },
  {
    name: 'FLOW_MARGIN',
    version: 1,
    parameters: [flow('pump_flow'), flow('minimum_cell_flow'), { ...flow('maximum_cell_flow'), optional: true }],
    result: { name: 'flow_margin', unit: 'm³/h' },
    source: 'Definition: the distance to the nearer end of what the cell takes.',
    equation: String.raw`m = \min(Q - Q_{least},\; Q_{most} - Q)`,
    evaluate: flowMargin,
    checks: [
      { args: [9, 4, 10], expect: 1, tolerance: 1e-12, where: 'by hand' },
      { args: [3, 4], expect: -1, tolerance: 1e-12, where: 'by hand' },
    ],
  },
  {
    name: 'CELL_MAY_RUN',
    version: 1,
    parameters: [
      flow('pump_flow'),
      flow('minimum_cell_flow'),
      { ...flow('maximum_cell_flow'), optional: true },
      { name: 'temperature', unit: '°C', min: -5, max: 50 },
      { name: 'cell_cold_limit', unit: '°C', min: -5, max: 50 },
    ],
    result: { name: 'cell_may_run', unit: 'truth' },
    source:
      'Common practice, no source: flow within the cell’s window, water at or over its cold limit (often 10 to 15 °C); no flow, no current.',
    equation: String.raw`Q_{least} \le Q \le Q_{most},\quad Q > 0,\quad T \ge T_{cold}`,
    evaluate: cellMayRun,
    checks: [
      { args: [9, 4, undefined, 26, 15], expect: true, tolerance: 0, where: 'by hand' },
      { args: [9, 4, undefined, 12, 15], expect: false, tolerance: 0, where: 'by hand: under the cold limit' },
      { args: [0, 0, undefined, 26, 15], expect: false, tolerance: 0, where: 'common practice: no flow, no current' },
    ],
  },
]
