import type { Basis } from '../units/basis'
import { NO_POWERS, type Powers, powersOf, samePowers, sameSize, sizeOf, unitOfPowers } from '../units/powers'
import { unit as unitOf } from '../units/unit'

/** A number in some unit, as far as the text of a formula tells. */
export interface Quantified {
  readonly kind: 'quantity'
  readonly powers: Powers
  /** of the unit; null where a plain factor may have converted it */
  readonly size: number | null
  /** what a concentration is counted as; undefined where it cannot be told or does not matter */
  readonly basis: Basis | null | undefined
  /**
   * How many absolute readings are summed in it: 1 in a temperature or a pH, 0 in a difference of two; null where it
   * cannot be told. A pH is a plain number with one.
   */
  readonly points: number | null
  /** where a temperature's scale has its zero; null where it cannot be told or there is no other */
  readonly zero: number | null
  /** what the sentence calls its unit */
  readonly label: string
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
  basis: undefined,
  points: 0,
  zero: null,
  label: '1',
}

/** Why two do not go together: another dimension or size of unit, another substance counted, a difference for a reading. */
export type Disagreement = 'unit' | 'basis' | 'difference'

/** Of a value in this unit. */
export function measureOf(code: string): Measure {
  if (code === 'truth') return TRUTH
  const unit = unitOf(code)
  if (!unit) return OPEN
  if (unit.dimension === 'choice') return CHOICE
  const hasZero = unit.dimension === 'temperature' || unit.dimension === 'pH'
  return {
    kind: 'quantity',
    powers: powersOf(unit),
    size: sizeOf(unit),
    basis: unit.dimension === 'concentration' ? unit.basis : undefined,
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
  if (!samePowers(a.powers, b.powers)) return 'unit'
  if (a.size !== null && b.size !== null && !sameSize(a.size, b.size)) return 'unit'
  const apart = a.basis !== undefined && b.basis !== undefined && a.basis !== b.basis
  return apart ? 'basis' : null
}

/** Of the two that agree, the one that says more, with what both together tell. */
export function merged(a: Measure, b: Measure): Measure {
  if (a.kind === 'open' || a.kind === 'plain') return b.kind === 'plain' ? a : b
  if (a.kind !== 'quantity' || b.kind !== 'quantity') return a
  return {
    ...a,
    size: a.size ?? b.size,
    basis: a.basis === undefined ? b.basis : a.basis,
    points: a.points ?? b.points,
    zero: a.zero ?? b.zero,
  }
}

/** Sum or difference of two that add. A plain number beside a reading may be a reading or a difference. */
export function sum(a: Measure, b: Measure, sign: 1 | -1): Measure {
  if (a.kind === 'plain' && b.kind === 'plain')
    return { kind: 'plain', value: a.value === null || b.value === null ? null : a.value + sign * b.value }
  if (a.kind !== 'quantity' || b.kind !== 'quantity') {
    const one = a.kind === 'quantity' ? a : b
    if (one.kind !== 'quantity') return OPEN
    const shifts = hasPoints(one)
    // 273.15 beside a temperature takes it to another unit
    return shifts ? { ...one, points: null, zero: null } : one
  }
  const points = a.points === null || b.points === null ? null : a.points + sign * b.points
  const both = merged(a, b) as Quantified
  return { ...both, points, label: labelOfPoints(both, points) }
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
  return named({ powers, size, basis: basisOfProduct(a, b), points: null }, [a.label, b.label], power)
}

/** To a power that is written in the formula. */
export function raised(a: Measure, power: number): Measure {
  if (a.kind === 'plain') return { kind: 'plain', value: a.value === null ? null : a.value ** power }
  if (a.kind !== 'quantity') return OPEN
  if (power === 1) return a
  const powers = a.powers.map((one) => one * power)
  const size = a.size === null ? null : a.size ** power
  const made = named({ powers, size, basis: undefined, points: null }, [a.label, ''], 1)
  return made.kind === 'quantity' && made.label === a.label ? { ...made, label: `(${a.label})^${power}` } : made
}

/** A factor turns a difference into one, and half the sum of two readings into a reading. */
function scaled(a: Quantified, factor: number | null): Quantified {
  const points = a.points === null || factor === null ? (a.points === 0 ? 0 : null) : a.points * factor
  return { ...a, size: null, basis: undefined, points, zero: null }
}

function basisOfProduct(a: Quantified, b: Quantified): Basis | null | undefined {
  const [mass, other] = a.powers[0] === 0 ? [b, a] : [a, b]
  return other.powers[0] === 0 ? mass.basis : undefined
}

/** The sum of two temperatures is none, and neither is their difference; of other units all this is nothing. */
function hasPoints({ powers, size }: Quantified): boolean {
  return samePowers(powers, KELVIN) || (samePowers(powers, NO_POWERS) && (size === null || size === 1))
}

const KELVIN: Powers = NO_POWERS.map((_, i) => (i === 4 ? 1 : 0))

function labelOfPoints({ label, powers }: Quantified, points: number | null): string {
  return points === 0 && label === 'pH' && samePowers(powers, NO_POWERS) ? '1' : label
}

function named(
  { powers, size, basis, points }: Omit<Quantified, 'kind' | 'label' | 'zero'>,
  [left, right]: readonly [string, string],
  power: 1 | -1,
): Quantified {
  // Of pH times pH nothing is known but that it is a number; of other units points mean nothing.
  const known = size === null ? undefined : unitOfPowers(powers, size)
  const counts = basis && known?.dimension === 'concentration' ? ` as ${basis}` : ''
  const written =
    right === '1' || right === '' ? left : `${bracketed(left)}${power === 1 ? '·' : '/'}${bracketed(right)}`
  return { kind: 'quantity', powers, size, basis, points, zero: null, label: known ? known.code + counts : written }
}

function bracketed(label: string): string {
  return /[ /·]/.test(label) ? `(${label})` : label
}
