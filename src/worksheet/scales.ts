import { samePowers } from '../units/powers'
import { MIXED } from './counted'
import { hasDimension, isReading, KELVIN, type Measure, NUMBER, OPEN, ofDegrees, type Quantified } from './measure'

/**
 * Why a product or quotient means nothing on the scales of its two sides; null where it may mean something.
 *
 * A pH is a logarithm: 8 is no twice of 4, and 7.4 times an alkalinity is no alkalinity. It multiplies nothing that has
 * a unit. A difference of two is a ratio of activities, and so is 10 to it, and those may. A share of a pH may stand in a
 * mean of several. °C may be multiplied (by volumes, in a mean over them), but nothing is divided by a reading whose
 * zero is only agreed: 30 °C is no one and a half times 20 °C. Differences and kelvin divide.
 */
export function senseless(a: Measure, b: Measure, power: 1 | -1): 'divided' | 'multiplied' | null {
  if (power === -1 && b.kind === 'quantity' && (isReading(b) || ofDegrees(b)) && a.kind !== 'open') return 'divided'
  if (a.kind !== 'quantity' || b.kind !== 'quantity') return null
  return (isLogarithmic(a) && hasDimension(b)) || (isLogarithmic(b) && hasDimension(a)) ? 'multiplied' : null
}

function isLogarithmic(a: Quantified): boolean {
  return isReading(a) && !hasDimension(a)
}

/** Whether it is the logarithm of something with a unit and nothing beside it: EXP makes that again, and no number. */
export function isBareLogarithm(a: Measure): boolean {
  return a.kind === 'quantity' && a.logarithm === true && isLogarithmic(a)
}

/** Whether a factor that is written in it may carry a unit of its own: the 10 of `EXP(-(free_chlorine / 10))` may be mg/L. */
export function mayBeNumber(a: Measure): boolean {
  return a.kind === 'quantity' && a.size === null
}

/**
 * The logarithm of something with a unit is a reading on a scale whose zero the unit sets, as a pH is one of mol/L: in
 * the formulas of water chemistry (Langelier's, say) a constant beside it accounts for that. It adds to numbers, and
 * multiplies nothing that has a unit.
 */
export function logarithm(a: Measure, name: string): Measure {
  if (a.kind !== 'quantity') return numberOf([a], name)
  if (a.size === null || (!hasDimension(a) && a.size === 1 && !isReading(a)))
    return { ...(numberOf([a], name) as Quantified), points: null }
  // minus the logarithm of mol/L is a pH
  const points = a.powers[3] === 1 ? -1 : 1
  return { ...NUMBER, points, logarithm: true, label: `${name}(${a.label})` }
}

/**
 * Of numbers a number; written only where all of them are. From a ratio of two substances comes a number too, but
 * alkalinity times that of salt over chlorine is no alkalinity.
 */
export function numberOf(given: readonly Measure[], name: string): Measure {
  if (given.some(({ kind }) => kind === 'open')) return OPEN
  const quantities = given.filter((one) => one.kind === 'quantity')
  if (quantities.length === 0) return { kind: 'plain', value: null }
  const mixed = quantities.find((one) => one.counted.size > 0 && !hasDimension(one))
  return mixed ? { ...NUMBER, counted: MIXED, label: `${name}(${mixed.label})` } : NUMBER
}

/** Of a power whose exponent is not one written number: what it gives, a number each time. */
export function exponential(base: Measure, exponent: Measure): Measure {
  const found = numberOf([base, exponent], 'POWER')
  const ofLogarithm = exponent.kind === 'quantity' && exponent.points !== 0 && !hasDimension(exponent)
  const isTen = base.kind === 'plain' && base.value === 10
  return found.kind === 'quantity' && isTen && ofLogarithm ? { ...found, size: null, activity: true } : found
}

/** 1.07 ^ (temperature - 20): the written base is that of one degree, as in every correction for temperature. */
export function isPerDegree(base: Measure, exponent: Measure): boolean {
  return (
    base.kind === 'plain' &&
    exponent.kind === 'quantity' &&
    samePowers(exponent.powers, KELVIN) &&
    exponent.size === 1 &&
    !isReading(exponent)
  )
}
