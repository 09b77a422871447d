import { type Basis, MOLAR_MASS } from '../units/basis'
import type { Powers } from '../units/powers'
import type { Unit } from '../units/unit'

/**
 * What a number counts: besides the substances, `itself` is a concentration of which nothing is said (mg/L of iron),
 * `any` a mass, or what a written factor may have converted, and `mixed` what differs and was put together all the same.
 */
type Substance = Basis | 'itself' | 'any' | 'mixed'

/**
 * Each substance with its exponent, as a dimension has exponents of kilogram and metre: through products, quotients and
 * powers no substance is lost or taken for another. A root of salt times alkalinity counts half of each, which is no
 * basis; a root of salt times salt counts salt. What has none is not there.
 */
export type Counted = ReadonlyMap<Substance, number>

export const NOTHING: Counted = new Map()

export const ANY: Counted = new Map([['any', 1]])

/** It stays whatever is done with it: no sum, product or power of NaN is anything else. */
export const MIXED: Counted = new Map([['mixed', Number.NaN]])

export function countedIn({ dimension, basis }: Unit, [kilograms = 0]: Powers): Counted {
  if (dimension === 'concentration') return new Map([[basis ?? 'itself', 1]])
  // The kilogram in a pressure is a mass of nothing in particular.
  return kilograms === 0 || dimension === 'pressure' ? NOTHING : new Map([['any', kilograms]])
}

export function countedTimes(a: Counted, b: Counted, power: number): Counted {
  if (b.size === 0) return a
  const made = new Map(a)
  for (const [substance, exponent] of b) {
    const sum = (made.get(substance) ?? 0) + power * exponent
    if (Math.abs(sum) < 1e-9) made.delete(substance)
    else made.set(substance, sum)
  }
  return made
}

export function countedToPower(a: Counted, power: number): Counted {
  return countedTimes(NOTHING, a, power)
}

/**
 * After a factor that is written in the formula: it may have turned one substance into another, but never a mixture into
 * a substance. A factor of 1 turns nothing into anything.
 */
export function countedScaled(a: Counted, factor: number | null): Counted {
  const [[substance, exponent] = ['any', 0]] = a
  const converts = a.size === 1 && substance !== 'mixed' && Math.abs(factor ?? 0) !== 1
  return converts ? new Map([['any', exponent]]) : a
}

/**
 * Whether the two count the same. Where they differ, the difference must be made up by as many of `any`, each of which is
 * a whole substance: a mass may be that of salt, and not that of half salt and half alkalinity.
 */
export function countTheSame(a: Counted, b: Counted): boolean {
  const { any = 0, ...others } = Object.fromEntries(countedTimes(a, b, -1))
  const rest = Object.values(others)
  if (rest.length === 0) return true
  const sum = rest.reduce((all, one) => all + one, 0)
  const areWhole = rest.length === 1 || rest.every((one) => Math.abs(one - Math.round(one)) < 1e-9)
  return areWhole && rest.every((one) => one * any < 0) && Math.abs(sum + any) < 1e-9
}

/** Of two that stand for each other, the one that says more; of two that differ (shares of different things), neither. */
export function countedTogether(a: Counted, b: Counted): Counted {
  if (!countTheSame(a, b)) return MIXED
  return a.has('any') ? b : a
}

/** The basis to name beside a unit; undefined where what is counted cannot be said by one: a mixture, or a part. */
export function basisNamed(a: Counted): Basis | null | undefined {
  const [[substance, exponent] = ['any', 1]] = a
  if (a.size > 1 || !(Math.abs(exponent - 1) < 1e-9)) return undefined
  return isBasis(substance) ? substance : null
}

function isBasis(substance: string): substance is Basis {
  return Object.hasOwn(MOLAR_MASS, substance)
}
