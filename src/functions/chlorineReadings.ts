import { HOCL_MODELS } from '../chemistry/cyanurateModels'
import type { Failure } from '../chemistry/failure'
import { outside } from '../chemistry/outside'
import type { Parameter } from './define'
import { PER_CHLORINE, PER_CYANURIC_ACID, ZERO_CELSIUS } from './waterReadings'

/** What the functions of chlorine and stabilizer read. */
export const PH: Parameter = { name: 'ph', unit: 'pH', min: 5, max: 10, fitted: [6.5, 8.5] }
export const TEMPERATURE: Parameter = { name: 'temperature', unit: '°C', min: 0, max: 45 }
export const FREE_CHLORINE: Parameter = { name: 'free_chlorine', unit: 'mg/L as Cl2', min: 0, max: 200 }
export const CYANURIC_ACID: Parameter = { name: 'cyanuric_acid', unit: 'mg/L', min: 0, max: 1_000 }
export const HOCL_MODEL: Parameter = { name: 'hocl_model', unit: 'choice', choices: HOCL_MODELS }

/** The failure for readings outside these ranges; pH is looked at by the chemistry. */
export function chlorineReadingsOutside(
  freeChlorine: number,
  cyanuricAcid: number,
  celsius: number,
): Failure | undefined {
  return (
    outside('free_chlorine', freeChlorine, 0, 200) ??
    outside('cyanuric_acid', cyanuricAcid, 0, 1_000) ??
    outside('temperature', celsius, 0, 45)
  )
}

/** The same readings as the chemistry takes them: K, mol/L of Cl2, mol/L of cyanuric acid. */
export function chlorineInMoles(
  freeChlorine: number,
  cyanuricAcid: number,
  celsius: number,
): readonly [T: number, chlorine: number, cyanurate: number] {
  return [celsius + ZERO_CELSIUS, freeChlorine / PER_CHLORINE, cyanuricAcid / PER_CYANURIC_ACID]
}
