import type { GivenStep, PlanRecord } from '../../notebook/record'
import type { Column } from '../../planner/bench'
import type { Plan, Say, Step } from '../../planner/step'
import versions from '../../planner/versions.build'
import { say } from '../../words/say'
import { labelOf } from '../labelOf'
import { planSentence, problemSentence, type Reader } from '../plan/planSentence'

/** A plan in the words and units of this moment, as it goes into the record; when, for whom and on what is the keeper's to say. */
export type GivenPlan = Omit<PlanRecord, 'id' | 'date' | 'scenario' | 'sample'>

/** What the volume was taken to be: it is worked out, and what was foretold hangs on it. */
const VOLUME = ['volume', 'volume_low', 'volume_high'] as const

export function givenPlan(plan: Plan, column: Column, reader: Reader): GivenPlan {
  const words = (one: Say) => planSentence(reader, one)
  const name = (quantity: string) => labelOf(quantity, reader.catalog.quantities.get(quantity)?.row)
  const volume = VOLUME.flatMap((key) => {
    const value = plan.end.get(key)
    return value === undefined ? [] : [[key, value] as const]
  })
  const { lsi } = plan
  return {
    swim: { now: plan.swim.now, says: plan.swim.reasons.map(words) },
    steps: plan.steps.map((step) => givenStep(step, words)),
    verdicts: [
      ...plan.verdicts.map(({ quantity, verdict, reason }) => ({
        quantity,
        verdict,
        says: words({ key: reason.key, facts: { quantity, ...reason.facts, reading: quantity } }),
      })),
      ...plan.cases.flatMap(({ forbids }) =>
        forbids.map((one) => ({ quantity: 'plan', verdict: 'forbids', says: words(one) })),
      ),
      ...plan.unmet.map(({ quantity, problem }) => ({
        quantity,
        verdict: 'unmet',
        says: problemSentence(problem, name(quantity)),
      })),
    ],
    complete: plan.complete,
    water: { ...Object.fromEntries(column), ...Object.fromEntries(volume) },
    end: Object.fromEntries(plan.end),
    ...(lsi === undefined ? {} : { lsi }),
    versions,
  }
}

function givenStep(step: Step, words: (one: Say) => string): GivenStep {
  const { kind, product, amount, strength, basis, at, wait, retest, rules, water, lsi } = step
  const states = [step.pump && say(`page.plan.pump_${step.pump}`), step.cell && say(`page.plan.cell_${step.cell}`)]
  return {
    kind,
    says: words(step.says),
    how: [...step.how.map(words), ...states.flatMap((state) => (state ? [state] : []))],
    cautions: step.cautions.map(words),
    ...(product === undefined ? {} : { product }),
    ...(amount === undefined ? {} : { amount: { value: amount.value, unit: amount.unit } }),
    ...(strength === undefined ? {} : { strength }),
    ...(basis === undefined ? {} : { basis }),
    at,
    wait,
    retest,
    rules,
    water: Object.fromEntries(water),
    ...(lsi === undefined ? {} : { lsi }),
  }
}

/** The plan in the record that is this one, word for word and figure for figure; the latest. */
export function keptAs(
  plans: Readonly<Record<string, PlanRecord>>,
  scenario: string,
  given: GivenPlan,
): PlanRecord | null {
  const same = Object.values(plans).filter((kept) => {
    const { id: _id, date: _date, sample: _sample, scenario: name, ...rest } = kept
    return name === scenario && JSON.stringify(inOrder(rest)) === JSON.stringify(inOrder(given))
  })
  return same.sort((a, b) => b.date.localeCompare(a.date))[0] ?? null
}

/** Plain data with its names in order, however it came about. */
function inOrder(data: unknown): unknown {
  if (Array.isArray(data)) return data.map(inOrder)
  if (typeof data !== 'object' || data === null) return data
  return Object.fromEntries(
    Object.entries(data)
      .sort(([a], [b]) => (a < b ? -1 : 1))
      .map(([key, value]) => [key, inOrder(value)]),
  )
}
