import { type Failure, fail } from './failure'
import { MOLAR_MASS } from './molarMass'
import { outside } from './outside'

/**
 * Molar conductivity of NaCl at 25 °C, S cm²/mol, by concentration in mol/L. To 0.1 mol/L the table of the CRC Handbook
 * (from memory; the values at 0.001, 0.01, 0.02, 0.05 and 0.1 agree within 0.1 % with a textbook exercise that was read);
 * 0.2 mol/L after Miller, J. Phys. Chem. 70 (1966) (from memory; the handbook's 16.0 mS/cm for 1 % at 20 °C agrees within 0.3 %).
 */
export const NACL_MOLAR_CONDUCTIVITY: readonly (readonly [concentration: number, molar: number])[] = [
  [0, 126.39],
  [0.001, 123.68],
  [0.005, 120.59],
  [0.01, 118.45],
  [0.02, 115.7],
  [0.05, 111.01],
  [0.1, 106.69],
  [0.2, 101.71],
]

/** Ends of the table, mg/L and µS/cm; up to `FITTED` its steps are close. */
export const MOST_NACL = 0.2 * 1_000 * MOLAR_MASS.sodiumChloride
export const MOST_CONDUCTIVITY = 0.2 * 1_000 * 101.71
export const FITTED_NACL = 0.1 * 1_000 * MOLAR_MASS.sodiumChloride
export const FITTED_CONDUCTIVITY = 0.1 * 1_000 * 106.69

/** One step of the table: Λ = at + slope √c from √c = `from` on, which gives `conductivity` µS/cm at its upper end. */
interface Step {
  readonly from: number
  readonly to: number
  readonly at: number
  readonly slope: number
  readonly conductivity: number
}

const STEPS: readonly Step[] = NACL_MOLAR_CONDUCTIVITY.slice(1).map(([c, molar], i) => {
  const [c0, molar0] = NACL_MOLAR_CONDUCTIVITY[i] ?? [0, molar]
  const [from, to] = [Math.sqrt(c0), Math.sqrt(c)]
  const slope = (molar - molar0) / (to - from)
  return { from, to, at: molar0 - slope * from, slope, conductivity: 1_000 * c * molar }
})

/**
 * Conductivity at 25 °C, µS/cm, of water whose only salt is `salt` mg/L of NaCl (0 to 11 689). Linear in √c between the
 * table's rows, as Kohlrausch's law asks.
 */
export function conductivityOfSalt(salt: number): number | Failure {
  const refused = outside('salt', salt, 0, MOST_NACL)
  if (refused) return refused
  const root = Math.sqrt(salt / 1_000 / MOLAR_MASS.sodiumChloride)
  const step = STEPS.find((s) => root <= s.to) ?? STEPS.at(-1)
  return step ? conductivity(step, root) : fail('no_convergence', 'salt')
}

/**
 * NaCl, mg/L, of which water of this conductivity at 25 °C (µS/cm, 0 to 20 342) would be made, were all its ions sodium
 * and chloride. The inverse of `conductivityOfSalt`, by Newton's method inside the table's step; to 1e-12 of itself.
 */
export function saltFromConductivity(measured: number): number | Failure {
  const refused = outside('conductivity', measured, 0, MOST_CONDUCTIVITY)
  if (refused || measured === 0) return refused ?? 0
  const step = STEPS.find((s) => measured <= s.conductivity) ?? STEPS.at(-1)
  if (!step) return fail('no_convergence', 'conductivity')
  let root = step.to
  for (let i = 0; i < 60; i++) {
    const excess = conductivity(step, root) - measured
    const steepness = 1_000 * root * (2 * step.at + 3 * step.slope * root)
    const next = Math.min(step.to, Math.max(step.from, root - excess / steepness))
    if (Math.abs(next - root) <= 1e-13 * step.to) return next * next * 1_000 * MOLAR_MASS.sodiumChloride
    root = next
  }
  return fail('no_convergence', 'conductivity', { residual: conductivity(step, root) - measured })
}

function conductivity(step: Step, root: number): number {
  return 1_000 * root * root * (step.at + step.slope * root)
}

/**
 * What a conductivity measured at `temperature` °C (0 to 50), without compensation, is at 25 °C, µS/cm.
 *
 * Ratio κ(T) / κ(25) of dilute NaCl, 0.542 at 0 °C and 1.531 at 50 °C: the curve of IEC 60746-3 as a meter's manual prints it,
 * by the parabola through these points, within 0.005 of the standard's two-decimal values between.
 */
export function conductivityAt25(measured: number, temperature: number): number | Failure {
  const refused = outside('conductivity', measured, 0, 1_000_000) ?? outside('temperature', temperature, 0, 50)
  if (refused) return refused
  const t = (temperature - 25) / 25
  return measured / (1 + ((1.531 - 0.542) / 2) * t + ((1.531 + 0.542) / 2 - 1) * t * t)
}
