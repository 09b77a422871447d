import { NO_POWERS, type Powers, powersOf, samePowers, sameSize, sizeOf, unitOfPowers } from '../units/powers'
import { unit as unitOf } from '../units/unit'
import {
  basisNamed,
  type Counted,
  countedIn,
  countedScaled,
  countedTimes,
  countedTogether,
  countedToPower,
  countTheSame,
  NOTHING,
} from './counted'

/** A number in some unit, as far as the text of a formula tells. */
export interface Quantified {
  readonly kind: 'quantity'
  readonly powers: Powers
  /** of the unit; null where a plain factor may have converted it */
  readonly size: number | null
  readonly counted: Counted
  /**
   * How many absolute readings are summed in it: 1 in a temperature or a pH, 0 in a difference of two; null where it
   * cannot be told. A pH is a plain number with one.
   */
  readonly points: number | null
  /** where a temperature's scale has its zero; null where it cannot be told or there is no other */
  readonly zero: number | null
  /** what the sentence calls its unit */
  readonly label: string
  /** the logarithm of something that has a unit, which its zero hangs on */
  readonly logarithm?: true
  /** a reading in °C is a factor of it, as in a mean over volumes: nothing can be divided by it */
  readonly degrees?: true
  /** 10 to a pH: an activity, which stands for a number and for moles in a litre alike */
  readonly activity?: true
}

/** What stands at a place of a formula. */
export type Measure =
  | Quantified
  /** a number that is written in the formula: it stands for whatever is asked for there */
  | { readonly kind: 'plain'; readonly value: number | null }
  /** a choice or a text; yes or no */
  | { readonly kind: 'choice' }
  | { readonly kind: 'truth' }
  /** it cannot be told, or was told already */
  | { readonly kind: 'open' }

export const OPEN: Measure = { kind: 'open' }
export const TRUTH: Measure = { kind: 'truth' }
export const CHOICE: Measure = { kind: 'choice' }
export const NUMBER: Quantified = {
  kind: 'quantity',
  powers: NO_POWERS,
  size: 1,
  counted: NOTHING,
  points: 0,
  zero: null,
  label: '1',
}

/** Why two do not go together: another dimension, another size of unit, another substance counted, a difference for a reading. */
export type Disagreement = 'unit' | 'size' | 'basis' | 'difference'

/** Of a value in this unit. */
export function measureOf(code: string): Measure {
  if (code === 'truth') return TRUTH
  const unit = unitOf(code)
  if (!unit) return OPEN
  if (unit.dimension === 'choice') return CHOICE
  const hasZero = unit.dimension === 'temperature' || unit.dimension === 'pH'
  const powers = powersOf(unit)
  return {
    kind: 'quantity',
    powers,
    size: sizeOf(unit),
    counted: countedIn(unit, powers),
    points: hasZero ? 1 : 0,
    zero: unit.dimension === 'temperature' ? unit.offset : null,
    label: code,
  }
}

/** Whether one may stand for the other: be compared with it, chosen beside it, given where it is asked for. */
export function disagreement(a: Measure, b: Measure): Disagreement | null {
  const apart = distance(a, b)
  if (apart !== null || a.kind !== 'quantity' || b.kind !== 'quantity') return apart
  if (a.points === null || b.points === null) return null
  if (Math.abs(a.points - b.points) > 1e-9) return 'difference'
  return a.points !== 0 && a.zero !== null && b.zero !== null && a.zero !== b.zero ? 'unit' : null
}

/** Whether the two add: a reading and a difference do. */
export function distance(a: Measure, b: Measure): Disagreement | null {
  if (a.kind === 'open' || b.kind === 'open') return null
  if (a.kind === 'plain') return b.kind === 'choice' || b.kind === 'truth' ? 'unit' : null
  if (b.kind === 'plain') return distance(b, a)
  if (a.kind !== 'quantity' || b.kind !== 'quantity') return a.kind === b.kind ? null : 'unit'
  if (!sameDimension(a, b)) return 'unit'
  // One reading is never turned into another by a factor alone: °F and °C have other zeros.
  if (a.size !== null && b.size !== null && !sameSize(a.size, b.size))
    return isReading(a) || isReading(b) ? 'unit' : 'size'
  // A share of two concentrations is a number like any other; only where mass is left, something is counted.
  return Math.abs(a.powers[0] ?? 0) < 1e-9 || countTheSame(a.counted, b.counted) ? null : 'basis'
}

function sameDimension(a: Quantified, b: Quantified): boolean {
  if (!a.activity && !b.activity) return samePowers(a.powers, b.powers)
  return samePowers(withoutMoles(a.powers), withoutMoles(b.powers))
}

/** With a mole in a litre as a number. */
function withoutMoles(powers: Powers): Powers {
  const moles = powers[3] ?? 0
  return powers.map((power, i) => (i === 3 ? 0 : i === 1 ? power + 3 * moles : power))
}

export function hasDimension(a: Quantified): boolean {
  return !samePowers(a.powers, NO_POWERS)
}

/** Whether it is, or is a sum of, readings on a scale whose zero is only agreed: °C, pH. */
export function isReading(a: Quantified): boolean {
  return a.points !== null && Math.abs(a.points) > 1e-9 && hasPoints(a) && a.zero !== ABSOLUTE
}

/** Whether a reading in degrees is in it, as itself or as a factor. */
export function ofDegrees(a: Quantified): true | undefined {
  return a.degrees || (isReading(a) && hasDimension(a)) || undefined
}

/** Whether it is anything but a plain number, so that not every power of it means something. */
export function hasUnit(a: Measure): boolean {
  if (a.kind !== 'quantity' || a.activity) return false
  return hasDimension(a) || isReading(a) || (a.size !== null && a.size !== 1)
}

/** Of the two that agree, the one that says more, with what both together tell. */
export function merged(a: Measure, b: Measure): Measure {
  if (a.kind === 'plain' && b.kind === 'plain') return a.value === b.value ? a : { kind: 'plain', value: null }
  if (a.kind === 'open' || a.kind === 'plain') return b.kind === 'plain' ? a : b
  if (a.kind !== 'quantity' || b.kind !== 'quantity') return a
  if (a.activity && !b.activity) return merged(b, a)
  return {
    ...a,
    size: a.size ?? b.size,
    counted: countedTogether(a.counted, b.counted),
    points: a.points ?? b.points,
    zero: a.zero ?? b.zero,
    ...((a.logarithm || b.logarithm) && { logarithm: true }),
    ...((a.degrees || b.degrees) && { degrees: true }),
  }
}

/** Sum or difference of two that add. A plain number beside a reading may be a reading or a difference. */
export function sum(a: Measure, b: Measure, sign: 1 | -1): Measure {
  if (a.kind === 'plain' && b.kind === 'plain')
    return { kind: 'plain', value: a.value === null || b.value === null ? null : a.value + sign * b.value }
  if (a.kind === 'plain' && a.value === 0) return sign === 1 ? b : negated(b)
  if (b.kind === 'plain' && b.value === 0) return a
  if (a.kind !== 'quantity' || b.kind !== 'quantity') {
    const one = a.kind === 'quantity' ? a : b
    if (one.kind !== 'quantity') return OPEN
    // A pH and something more is still a pH; a pH less something may be how far it lies from another.
    if (sign === 1 && one.points === 1 && one.label === 'pH') return one
    if (!hasPoints(one)) return one
    // 273.15 beside a temperature takes it to another unit
    const { degrees: _, ...rest } = one
    return { ...rest, points: null, zero: null }
  }
  const points = a.points === null || b.points === null ? null : a.points + sign * b.points
  const both = merged(a, b) as Quantified
  const label = b.label === 'pH' && both.label === '1' ? 'pH' : both.label
  const { degrees, ...rest } = both
  const kept = degrees && sign === 1 ? both : rest
  return { ...kept, points, label: labelOfPoints({ ...both, label }, points) }
}

/** Product (`power` 1) or quotient (`power` -1). A plain factor may be a conversion: it leaves dimension alone. */
export function product(a: Measure, b: Measure, power: 1 | -1): Measure {
  if (a.kind === 'open' || b.kind === 'open') return OPEN
  if (a.kind === 'plain' && b.kind === 'plain') {
    const value = a.value === null || b.value === null ? null : a.value * b.value ** power
    return { kind: 'plain', value }
  }
  if (a.kind === 'quantity' && b.kind === 'plain') return scaled(a, b.value === null ? null : b.value ** power)
  if (a.kind === 'plain' && b.kind === 'quantity') {
    const turned = raised(b, power)
    return turned.kind === 'quantity' ? scaled(turned, a.value) : OPEN
  }
  if (a.kind !== 'quantity' || b.kind !== 'quantity') return OPEN
  const powers = a.powers.map((one, i) => one + power * (b.powers[i] ?? 0))
  const size = a.size === null || b.size === null ? null : a.size * b.size ** power
  const counted = countedTimes(a.counted, b.counted, power)
  const points = isReading(b) ? stillLogarithmic(a) : null
  const written = b.label === '1' ? a.label : `${bracketed(a.label)}${power === 1 ? '·' : '/'}${bracketed(b.label)}`
  const activity = a.activity || b.activity
  const degrees = ofDegrees(a) || ofDegrees(b)
  const more = { ...(activity && { activity }), ...(degrees && { degrees }) }
  return named({ powers, size, counted, points, ...more }, written)
}

/** To a power that is written in the formula. */
export function raised(a: Measure, power: number): Measure {
  if (a.kind === 'plain') return { kind: 'plain', value: a.value === null ? null : a.value ** power }
  if (a.kind !== 'quantity') return OPEN
  if (power === 1) return a
  const powers = a.powers.map((one) => one * power)
  const size = a.size === null ? null : a.size ** power
  const counted = countedToPower(a.counted, power)
  const points = stillLogarithmic(a)
  const { activity } = a
  const degrees = ofDegrees(a)
  const more = { ...(activity && { activity }), ...(degrees && { degrees }) }
  return named({ powers, size, counted, points, ...more }, `(${a.label})^${power}`)
}

export function negated(a: Measure): Measure {
  if (a.kind === 'plain') return { kind: 'plain', value: a.value === null ? null : -a.value }
  return a.kind === 'quantity' ? { ...a, points: a.points === null ? null : -a.points } : a
}

/** A pH squared, or times another, is as little a number to multiply by as a pH is. */
function stillLogarithmic(a: Quantified): number | null {
  return isReading(a) && !hasDimension(a) ? a.points : null
}

/** A factor turns a difference into one, and half the sum of two readings into a reading. */
function scaled(a: Quantified, factor: number | null): Quantified {
  const points = a.points === null || factor === null ? (a.points === 0 ? 0 : null) : a.points * factor
  const zero = a.zero === ABSOLUTE ? ABSOLUTE : null
  return { ...a, size: null, counted: countedScaled(a.counted, factor), points, zero }
}

/** The sum of two temperatures is none, and neither is their difference; of other units all this is nothing. */
function hasPoints({ powers, size }: Quantified): boolean {
  return samePowers(powers, KELVIN) || (samePowers(powers, NO_POWERS) && (size === null || size === 1))
}

/** of kelvin, the one scale of temperature that begins at nothing */
const ABSOLUTE = unitOf('K')?.offset

export const KELVIN: Powers = NO_POWERS.map((_, i) => (i === 4 ? 1 : 0))

function labelOfPoints({ label, powers }: Quantified, points: number | null): string {
  return points === 0 && label === 'pH' && samePowers(powers, NO_POWERS) ? '1' : label
}

function named(made: Omit<Quantified, 'kind' | 'label' | 'zero'>, written: string): Quantified {
  const known = made.size === null || made.points !== null ? undefined : unitOfPowers(made.powers, made.size)
  const basis = basisNamed(made.counted)
  const counts = basis && known?.dimension === 'concentration' ? ` as ${basis}` : ''
  const label = known && basis !== undefined ? known.code + counts : written
  return { kind: 'quantity', ...made, zero: null, label }
}

function bracketed(label: string): string {
  return /[ /·]/.test(label) ? `(${label})` : label
}
