import { Batch } from '../../src/engine/batch'
import { hasValue } from '../../src/engine/outcome'
import type { Value } from '../../src/functions/define'
import type { Problem } from '../../src/words/problem'
import { sentence } from '../../src/words/say'
import { shippedCatalog } from '../../src/worksheet/shippedCatalog'

export interface Answers {
  readonly number: (quantity: string) => number
  readonly value: (quantity: string) => Value
  readonly problem: (quantity: string) => Problem
  /** the sentence that stands at the cell */
  readonly said: (quantity: string) => string
  readonly missing: (quantity: string) => unknown
  readonly notices: (quantity: string) => readonly string[]
}

/** The worked-out quantities of one shipped worksheet for what is given, through the engine. */
export function sheet(worksheet: string): (given: Readonly<Record<string, Value | undefined>>) => Answers {
  const catalog = shippedCatalog()
  const wanted = [...catalog.quantities.values()].filter((q) => q.worksheet === worksheet && q.formula)
  const batch = new Batch(
    catalog,
    wanted.map(({ name }) => name),
    1,
  )
  return (given) => {
    const known = Object.entries(given).flatMap(([name, value]) => {
      if (!catalog.quantities.has(name)) throw new Error(`there is no quantity ${name}`)
      return value === undefined ? [] : [[name, value] as const]
    })
    const [outcomes = []] = batch.evaluate([new Map(known)])
    const of = (quantity: string) => {
      const outcome = outcomes[wanted.findIndex(({ name }) => name === quantity)]
      if (!outcome) throw new Error(`${worksheet} works out no ${quantity}`)
      return outcome
    }
    const value = (quantity: string) => {
      const outcome = of(quantity)
      if (!hasValue(outcome)) throw new Error(`${quantity}: ${sentence(outcome.problem)}`)
      return outcome.value
    }
    const problem = (quantity: string) => {
      const outcome = of(quantity)
      if (hasValue(outcome)) throw new Error(`${quantity} is ${outcome.value}`)
      return outcome.problem
    }
    return {
      value,
      problem,
      number: (quantity) => {
        const found = value(quantity)
        if (typeof found !== 'number') throw new Error(`${quantity} is ${found}`)
        return found
      },
      said: (quantity) => sentence(problem(quantity)),
      missing: (quantity) => {
        const { code, facts } = problem(quantity)
        return code === 'missing' ? facts.names : code
      },
      notices: (quantity) => of(quantity).notices,
    }
  }
}

/** US customary units in ours, by definition (NIST SP 811). */
export const POUND = 0.45359237
export const OUNCE = POUND / 16
export const US_GALLON = 0.003785411784
export const US_FLUID_OUNCE = 0.0295735295625
/** the volume that handbook tables dose for, m³ */
export const TEN_THOUSAND_GALLONS = 10_000 * US_GALLON
