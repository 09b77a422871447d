import type { Failure } from './failure'
import { MOLAR_MASS } from './molarMass'
import { outside } from './outside'
import { volumeOutside } from './volumeOutside'

/** C/mol, exact since the SI of 2019 */
const FARADAY = 96_485.33212

/** g of Cl2 that one ampere makes in an hour at full efficiency: 2 Cl- = Cl2 + 2 e-; 1.3228. */
export const GRAMS_PER_AMPERE_HOUR = (3_600 * MOLAR_MASS.chlorine) / (2 * FARADAY)

/** mg/L of alkalinity as CaCO3 that a mg/L of chlorine carries as OCl- and OH-: half of 100.087 / 70.906, 0.706. */
export const ALKALINITY_PER_CHLORINE = MOLAR_MASS.calciumCarbonate / 2 / MOLAR_MASS.chlorine

/**
 * Chlorine, g/h as Cl2, that a cell makes: 1.3228 × current × pairs × efficiency (Faraday's law).
 *
 * `current` A through the stack (0 to 1000); `pairs` of plates that the same current passes one after the other
 * (1 to 100); `efficiency` 0.05 to 1, usually 0.6 to 0.95: lower with little salt, cold water, much chlorine, worn plates.
 */
export function cellOutputFromCurrent(current: number, pairs: number, efficiency: number): number | Failure {
  return (
    outside('cell_current', current, 0, 1_000) ??
    outside('cell_pairs', pairs, 1, 100) ??
    outside('current_efficiency', efficiency, 0.05, 1) ??
    GRAMS_PER_AMPERE_HOUR * current * pairs * efficiency
  )
}

/**
 * A cell's output at full setting, g/h, from a night: (dawn - dusk) × volume / (hours × setting), with free chlorine in
 * mg/L, m³, hours in the dark with pump and cell on throughout. What the water used up in the night is not in it, so it is the
 * least that the cell made. Chlorine that did not rise is refused: it says nothing about the cell.
 */
export function cellOutputMeasured(
  volume: number,
  dusk: number,
  dawn: number,
  hours: number,
  setting: number,
): number | Failure {
  return (
    volumeOutside(volume) ??
    outside('free_chlorine_dusk', dusk, 0, 50) ??
    outside('free_chlorine_dawn', dawn, dusk, 50) ??
    outside('dark_hours', hours, 1, 24) ??
    outside('cell_setting', setting, 0.01, 1) ??
    ((dawn - dusk) * volume) / (hours * setting)
  )
}

/** Hours a day that the cell has to run: demand mg/L/day × volume m³ / (output g/h × setting). It may exceed 24. */
export function cellHours(demand: number, volume: number, output: number, setting: number): number | Failure {
  return (
    outside('chlorine_demand', demand, 0, 100) ??
    volumeOutside(volume) ??
    outside('cell_output', output, 0.01, 1_000_000) ??
    outside('cell_setting', setting, 0.01, 1) ??
    (demand * volume) / (output * setting)
  )
}

/** Chlorine, mg/L/day, that the cell makes in `hours` a day: output g/h × setting × hours / volume m³. */
export function chlorineMade(output: number, setting: number, hours: number, volume: number): number | Failure {
  return (
    outside('cell_output', output, 0, 1_000_000) ??
    outside('cell_setting', setting, 0, 1) ??
    outside('pump_hours', hours, 0, 24) ??
    volumeOutside(volume) ??
    (output * setting * hours) / volume
  )
}

/**
 * What cell and chlorine do to alkalinity, mg/L as CaCO3: 0.706 × (made - used), chlorine in mg/L.
 *
 * NaCl + H2O = NaOCl + H2 leaves hypochlorite, a base; used up, it is chloride again and the base is gone. Over a day in which
 * as much is used as made the balance is nil: a salt pool's pH climbs because carbon dioxide leaves the water, not
 * because of the cell's reaction.
 */
export function cellAlkalinity(made: number, used: number): number | Failure {
  return (
    outside('chlorine_made', made, 0, 1_000) ??
    outside('chlorine_used', used, 0, 1_000) ??
    ALKALINITY_PER_CHLORINE * (made - used)
  )
}
