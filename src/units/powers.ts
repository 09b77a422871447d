import { type Dimension, UNITS, type Unit } from './unit'

/** Exponents of kilogram, metre, hour, mole, kelvin, ampere, volt, µS/cm and NTU; a pH is a plain number. */
export type Powers = readonly number[]

const of = (kg = 0, m = 0, h = 0, mol = 0, K = 0, A = 0, V = 0, S = 0, NTU = 0): Powers => [
  kg,
  m,
  h,
  mol,
  K,
  A,
  V,
  S,
  NTU,
]

export const NO_POWERS: Powers = of()

/** What each dimension is made of, and how much of that the first of its units is. */
const MADE_OF: Readonly<Record<Dimension, readonly [powers: Powers, first: number]>> = {
  concentration: [of(1, -3), 1e-3],
  'concentration a day': [of(1, -3, -1), 1e-3 / 24],
  'amount concentration': [of(0, -3, 0, 1), 1000],
  amount: [of(0, 0, 0, 1), 1],
  temperature: [of(0, 0, 0, 0, 1), 1],
  length: [of(0, 1), 1],
  area: [of(0, 2), 1],
  volume: [of(0, 3), 1],
  mass: [of(1), 1],
  'mass flow': [of(1, 0, -1), 1e-3],
  flow: [of(0, 3, -1), 1],
  time: [of(0, 0, 1), 1],
  'hours a day': [NO_POWERS, 1 / 24],
  rate: [of(0, 0, -1), 1 / 24],
  'depth a day': [of(0, 1, -1), 1e-3 / 24],
  speed: [of(0, 1, -1), 3600],
  // 1 kPa is 1000 kg/(m s²)
  pressure: [of(1, -1, -2), 1000 * 3600 ** 2],
  conductivity: [of(0, 0, 0, 0, 0, 0, 0, 1), 1],
  voltage: [of(0, 0, 0, 0, 0, 0, 1), 1],
  current: [of(0, 0, 0, 0, 0, 1), 1],
  turbidity: [of(0, 0, 0, 0, 0, 0, 0, 0, 1), 1],
  'share of air': [NO_POWERS, 1e-6],
  pH: [NO_POWERS, 1],
  number: [NO_POWERS, 1],
  choice: [NO_POWERS, 1],
}

export function powersOf({ dimension }: Unit): Powers {
  return MADE_OF[dimension][0]
}

/** How many of the kilograms, metres, hours ... one of the unit is; zero points apart. */
export function sizeOf({ dimension, factor }: Unit): number {
  return MADE_OF[dimension][1] * factor
}

export function samePowers(a: Powers, b: Powers): boolean {
  return a.every((power, i) => Math.abs(power - (b[i] ?? 0)) < 1e-9)
}

export function sameSize(a: number, b: number): boolean {
  return Math.abs(a - b) <= 1e-6 * Math.abs(a)
}

/** The unit of these powers and this size, counted as nothing in particular; undefined where none is known. */
export function unitOfPowers(powers: Powers, size: number | null): Unit | undefined {
  return UNITS.find(
    (unit) =>
      unit.dimension !== 'choice' &&
      unit.dimension !== 'pH' &&
      unit.basis === null &&
      samePowers(powersOf(unit), powers) &&
      (size === null || sameSize(sizeOf(unit), size)),
  )
}
