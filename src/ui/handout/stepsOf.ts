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

/** The steps of the first week, numbered as in the plan. What was said of a product is not said again at its next dose. */
export function stepsOf(plan: Plan, reader: Reader, start: Date): readonly SheetStep[] {
  const first = new Map<string, Step & { readonly number: number }>()
  return plan.steps.flatMap((step, index): SheetStep[] => {
    if (step.at > WEEK) return []
    const number = index + 1
    const key = `${step.kind} ${step.product ?? number}`
    const before = first.get(key)
    if (!before) first.set(key, { ...step, number })
    return [stepOf({ step, number, before, reader, start })]
  })
}

function stepOf(of: {
  step: Step
  number: number
  before: (Step & { readonly number: number }) | undefined
  reader: Reader
  start: Date
}): SheetStep {
  const { step, number, before, reader, start } = of
  const words = (one: Say) => planSentence(reader, one)
  const how = step.how.filter(({ key }) => key !== 'plan.how.sample')
  const cautions = step.cautions.filter(({ key }) => !SAID_ONCE.has(key))
  const known = (one: Say, all: readonly Say[] = []) => all.some(({ key }) => key === one.key)
  const newHow = how.filter((one) => !known(one, before?.how))
  const newCautions = cautions.filter((one) => !known(one, before?.cautions))
  const as = before === undefined ? {} : { step: before.number }
  return {
    number,
    when: startWords(start, step.at),
    says: words(step.says),
    label: before?.strength === step.strength && before?.basis === step.basis && before ? '' : labelWords(step),
    how: [...(newHow.length < how.length ? [say('handout.same_way', as)] : []), ...newHow.map(words)],
    state: [
      ...(step.pump && !how.some(({ key }) => SAY_PUMP.test(key)) ? [say(`page.plan.pump_${step.pump}`)] : []),
      ...(step.cell && !how.some(({ key }) => SAY_CELL.test(key)) ? [say(`page.plan.cell_${step.cell}`)] : []),
    ],
    wait: step.kind === 'wait' ? untilWords(start, step.at + step.wait) : waitWords(start, step.at, step.wait),
    cautions: [
      ...(newCautions.length < cautions.length ? [say('handout.same_caution', as)] : []),
      ...newCautions.map(words),
    ],
    tick: step.kind !== 'gate',
  }
}

/** What to look for on the customer's own label; nothing where the product is sold pure only. */
function labelWords({ product, strength, basis }: Step): string {
  if (product === undefined || strength === undefined || basis === undefined || strength === 100) return ''
  const counts = say(`choice.step_strength_basis.${basis}`)
  return say('handout.label', { product: productWords(product), strength, counts })
}
