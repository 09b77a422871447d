import type { Notebook } from '../notebook/notebook'
import type { GivenStep, PlanRecord } from '../notebook/record'
import type { ErrorOf } from './errorOf'
import { instant, isAfter } from './instant'
import type { Interval } from './interval'
import { type Measured, measuredOf } from './measured'

/** Readings that a plan foretells and that stay until the next test; chlorine does not. */
export const COMPARED = ['ph', 'total_alkalinity', 'calcium_hardness', 'cyanuric_acid', 'borate', 'salt'] as const

export interface Comparison {
  readonly quantity: (typeof COMPARED)[number]
  readonly before: number
  readonly foretold: number
  readonly measured: number
  /** within what the reading was to be expected, by the tests' errors and the volume's */
  readonly expected: Interval
  /** beyond what the tests can tell, and on which side */
  readonly side: 'as_foretold' | 'more' | 'less'
  /** whether the plan meant to change it at all */
  readonly meant: boolean
}

export interface Outcome {
  readonly plan: PlanRecord
  readonly measured: Measured
  /** which of the plan's additions were made, by what was written down: all, none of them known, or the first so many */
  readonly done: 'all' | 'unknown' | number
  readonly comparisons: readonly Comparison[]
}

/**
 * What became of each plan: the first dated test of the pool after it, before the next plan, beside what was foretold. Where only the
 * first steps were marked as made, the water foretold after those counts; where a later one was made and an earlier one
 * not, no water was foretold, and nothing is compared.
 */
export function foretold(
  notebook: Pick<Notebook, 'plans' | 'samples' | 'additions'>,
  errorOf: ErrorOf,
): readonly Outcome[] {
  const plans = Object.values(notebook.plans)
    .filter(({ sample }) => sample !== null)
    .sort((a, b) => instant(a.date) - instant(b.date))
  const tests = measuredOf(notebook)
  let from = 0
  return plans.flatMap((plan, i): readonly Outcome[] => {
    while (from < tests.length && isAfter(plan.date, tests[from]?.date ?? '') === true) from++
    const next = plans[i + 1]
    const measured = tests
      .slice(from, from + NEAR)
      .find(
        ({ id, date }) =>
          id !== plan.sample && isAfter(date, plan.date) === true && (!next || isAfter(date, next.date) !== true),
      )
    if (measured === undefined) return []
    const done = doneOf(plan, notebook)
    if (done === null) return []
    const water = done === 'all' || done === 'unknown' ? plan.end : waterAfter(plan.steps, done)
    const comparisons = COMPARED.flatMap((quantity) => compare(plan, measured, water, quantity, errorOf))
    return comparisons.length === 0 ? [] : [{ plan, measured, done, comparisons }]
  })
}

/** Tests looked at after a plan: those of its own day come before the one that counts. */
const NEAR = 50

/** A step that adds something or renews water: what can be marked as done, and changes what is foretold. */
export const isWork = ({ kind }: GivenStep) => kind === 'dose' || kind === 'dilute'

/** Null where a later step was made without an earlier one. */
function doneOf(plan: PlanRecord, { additions }: Pick<Notebook, 'additions'>): Outcome['done'] | null {
  const work = plan.steps.flatMap((step, at) => (isWork(step) ? [at] : []))
  const made = new Set(Object.values(additions).flatMap(({ plan: id, step }) => (id === plan.id ? [step] : [])))
  if (work.length === 0) return 'all'
  if (made.size === 0) return 'unknown'
  const first = work.findIndex((at) => !made.has(at))
  if (first === -1) return 'all'
  return work.slice(first).some((at) => made.has(at)) ? null : first
}

/** The water after the first so many doses and dilutions. */
function waterAfter(steps: readonly GivenStep[], count: number): PlanRecord['end'] {
  return steps.filter(isWork)[count - 1]?.water ?? {}
}

function compare(
  plan: PlanRecord,
  measured: Measured,
  water: PlanRecord['end'],
  quantity: Comparison['quantity'],
  errorOf: ErrorOf,
): readonly Comparison[] {
  const before = plan.water[quantity]
  const predicted = water[quantity]
  const found = measured.figures.get(quantity)
  if (typeof before !== 'number' || typeof predicted !== 'number' || found === undefined) return []
  const error = errorOf(quantity, before)
  const again = errorOf(quantity, found, measured.methods.get(quantity))
  if (error === undefined || again === undefined) return []
  const change = predicted - before
  const [most, least] = spread(plan.water)
  const ends = [before + change * most, before + change * least].sort((a, b) => a - b)
  // once for the reading that the plan rests on, once for the one that it is held against
  const expected = { low: (ends[0] ?? predicted) - error - again, high: (ends[1] ?? predicted) + error + again }
  const side = found < expected.low ? 'less' : found > expected.high ? 'more' : 'as_foretold'
  return [
    { quantity, before, foretold: predicted, measured: found, expected, side, meant: Math.abs(change) > error / 2 },
  ]
}

/** By how much more or less a change may come out because the volume is known only so far. */
function spread({ volume, volume_low: low, volume_high: high }: PlanRecord['water']): readonly [number, number] {
  if (typeof volume !== 'number' || typeof low !== 'number' || typeof high !== 'number') return [1, 1]
  return low > 0 && high > 0 ? [volume / low, volume / high] : [1, 1]
}
