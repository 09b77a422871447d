import type { Plan, Say, Step } from '../../planner/step'
import { say } from '../../words/say'
import { planSentence, productWords, type Reader } from '../plan/planSentence'
import { startWords, untilWords, waitWords } from './clock'
import type { SheetStep } from './sheet'

/** Steps that start later than so many hours go by a new test, and stand on the second page. */
export const WEEK = 8 * 24

export const OUT_OF_WATER = 'plan.caution.out_of_water'

/** Said once over all steps, or at the foot of the sheet. */
const SAID_ONCE = new Set([OUT_OF_WATER, 'plan.caution.label'])
/** Ways of adding that say themselves that the pump runs, and that the cell does not. */
const SAY_PUMP = /^plan\.how\.(acid|pour|dissolve|soda_ash|calcium|salt|dusk|drain)$/
const SAY_CELL = /^plan\.how\.(acid|salt|drain)$/

/** Shorter ways are said again: that is easier to follow than a reference. */
const SAID_AGAIN = 40

/** Steps in which nobody does anything. */
const PAUSES = new Set(['plan.step.tomorrow', 'plan.step.carbonate_settles', 'plan.step.stabilizer_dissolves'])

type Numbered = Step & { readonly number: number }

/**
 * The steps of the first week, numbered as in the plan. What was said of a product is not said again at its next dose, and each
 * caution stands once: the steps after it point there.
 */
export function stepsOf(plan: Plan, reader: Reader, start: Date): readonly SheetStep[] {
  const first = new Map<string, Numbered>()
  const cautioned = new Map<string, number>()
  return plan.steps.flatMap((step, index): SheetStep[] => {
    if (step.at > WEEK) return []
    const number = index + 1
    const key = `${step.kind} ${step.product ?? number}`
    const before = first.get(key)
    if (!before) first.set(key, { ...step, number })
    return [stepOf({ step, number, before, cautioned, reader, start })]
  })
}

function stepOf(of: {
  step: Step
  number: number
  before: Numbered | undefined
  cautioned: Map<string, number>
  reader: Reader
  start: Date
}): SheetStep {
  const { step, number, before, reader, start } = of
  const how = step.how.filter(({ key }) => key !== 'plan.how.sample')
  const pause = PAUSES.has(step.says.key)
  return {
    number,
    when: startWords(start, step.at),
    says: planSentence(reader, step.says),
    label: before?.strength === step.strength && before?.basis === step.basis && before ? '' : labelWords(step),
    how: howWords(how, before, reader),
    state: [
      ...(step.pump && !how.some(({ key }) => SAY_PUMP.test(key)) ? [say(`page.plan.pump_${step.pump}`)] : []),
      ...(step.cell && !how.some(({ key }) => SAY_CELL.test(key)) ? [say(`page.plan.cell_${step.cell}`)] : []),
    ],
    wait: step.kind === 'wait' ? untilWords(start, step.at + step.wait) : waitWords(start, step.at, step.wait),
    cautions: cautionWords(step, number, of.cautioned, reader),
    tick: step.kind !== 'gate' && !pause,
    pause,
  }
}

/** Where and how; what was said at an earlier dose of the product is pointed to. */
function howWords(how: readonly Say[], before: Numbered | undefined, reader: Reader): readonly string[] {
  const words = how.map((one) => planSentence(reader, one))
  if (!before) return words
  const known = before.how.map((one) => planSentence(reader, one))
  const again = words.filter((one) => known.includes(one))
  if (again.join(' ').length < SAID_AGAIN) return words
  return [say('handout.same_way', { step: before.number }), ...words.filter((one) => !again.includes(one))]
}

/** The dangers of a step: those that stand beside an earlier one are pointed to, at the very step where they stand. */
function cautionWords(step: Step, number: number, cautioned: Map<string, number>, reader: Reader): readonly string[] {
  const words = step.cautions.filter(({ key }) => !SAID_ONCE.has(key)).map((one) => planSentence(reader, one))
  const fresh = words.filter((one) => !cautioned.has(one))
  const steps = [...new Set(words.flatMap((one) => cautioned.get(one) ?? []))].toSorted((a, b) => a - b)
  for (const one of fresh) cautioned.set(one, number)
  if (steps.length === 0) return fresh
  return [...fresh, say('handout.same_caution', { count: steps.length, steps: steps.map(String) })]
}

/** What to look for on the customer's own label; nothing where the product is sold pure only. */
function labelWords({ product, strength, basis }: Step): string {
  if (product === undefined || strength === undefined || basis === undefined || strength === 100) return ''
  const counts = say(`choice.step_strength_basis.${basis}`)
  return say('handout.label', { product: productWords(product), strength, counts })
}
