import type { Plan } from '../../planner/step'
import { daysBetween } from '../../record/instant'
import { say } from '../../words/say'
import { clockWords, weekdayWords } from '../desk/when'
import { labelInside, labelOf } from '../labelOf'
import { planSentence, problemSentence, type Reader } from '../plan/planSentence'
import type { Untested } from '../plan/untested'
import { byDaylight } from './byDaylight'
import { after, dayTitle } from './clock'
import { findings, leftAlone, spared } from './findings'
import { neverDo } from './neverDo'
import type { Sheet, SheetDay, SheetStep } from './sheet'
import { OUT_OF_WATER, stepsOf, WEEK } from './stepsOf'

/** Two or three of what must not be done are read; ten are not. */
const MOST_NEVER = 3

/** Said over all steps: days may go by before its place among them. */
const EACH_DAY = 'plan.retest.each_day'

/** More sentences than this of what was found nobody takes home. */
const MOST_FOUND = 4

/**
 * The sheet of a plan whose first step is taken at `start`: nothing on it that the plan does not say, but for the age of the
 * test.
 * @param untested why this water has to be tested first; null where it was
 */
export function sheetOf(made: Plan, reader: Reader, start: Date, untested: Untested | null): Sheet {
  const plan = { ...made, steps: byDaylight(made.steps, start) }
  const found = findings(plan, reader)
  return {
    swim: untested !== null && plan.swim.now === 'yes' ? say('plan.swim.stale') : swimWords(plan),
    swimWhy: [
      ...(untested === null ? [] : [say(untested.key, untested.facts)]),
      ...swimWhy(plan, reader, untested !== null),
    ],
    found: found.length === 0 ? [nothingFound(untested)] : found.slice(0, MOST_FOUND),
    foundMore: found.slice(MOST_FOUND),
    alone: leftAlone(plan, reader),
    spared: spared(plan, reader),
    together: togetherOf(plan),
    days: daysOf(stepsOf(plan, reader, start), plan, start),
    later: laterOf(plan, reader, start),
    cases: plan.cases.map(({ label }) => planSentence(reader, label)),
    done: plan.cases.flatMap(({ done }) => done.map(({ says }) => planSentence(reader, says))),
    never: [...forbidden(plan, reader), ...neverDo(plan).map((key) => say(key))].slice(0, MOST_NEVER),
    retest: retestOf(plan, reader, start),
    left: leftOut(plan, reader),
  }
}

function nothingFound(untested: Untested | null): string {
  return say(untested?.key === 'plan.swim.why_foretold' ? 'handout.found.nothing_foretold' : 'handout.found.nothing')
}

/** What holds for every step, or for every day of them. */
function togetherOf({ steps }: Plan): readonly string[] {
  const adds = steps.some(({ cautions }) => cautions.some(({ key }) => key === OUT_OF_WATER))
  const daily = steps.some(({ says }) => says.key === EACH_DAY)
  return [...(adds ? [say('handout.together')] : []), ...(daily ? [say(EACH_DAY)] : [])]
}

/** What the cases that hold say is not to be done: it comes first. */
function forbidden(plan: Plan, reader: Reader): readonly string[] {
  return plan.cases.flatMap(({ forbids }) => forbids.map((one) => planSentence(reader, one)))
}

function swimWhy(plan: Plan, reader: Reader, untested: boolean): readonly string[] {
  if (plan.swim.now === 'yes') return untested ? [] : [say('handout.swim.why_yes')]
  return plan.swim.reasons.map((reason) => planSentence(reader, reason))
}

function swimWords(plan: Plan): string {
  if (plan.swim.now === 'yes') {
    return say(plan.steps.some(({ kind }) => kind === 'dose') ? 'handout.swim.yes_steps' : 'handout.swim.yes')
  }
  const { after: step } = plan.swim
  return step === undefined ? say('handout.swim.no') : say('handout.swim.after', { step })
}

/** The steps by the day of the calendar on which they may start. */
function daysOf(near: readonly SheetStep[], plan: Plan, start: Date): readonly SheetDay[] {
  const days = new Map<number, SheetStep[]>()
  for (const step of near) {
    const day = daysBetween(start, after(start, plan.steps[step.number - 1]?.at ?? 0))
    days.set(day, [...(days.get(day) ?? []), step])
  }
  return [...days].sort(([a], [b]) => a - b).map(([day, steps]) => ({ title: dayTitle(start, day), steps }))
}

/** What to test again and when, within the sheet's week; then how to take the bottle. */
function retestOf(plan: Plan, reader: Reader, start: Date): readonly string[] {
  const near = plan.steps.filter(({ at }) => at <= WEEK)
  const last = near.findLast(({ kind, at }) => kind === 'retest' && at > 0)
  const afterSteps = last?.retest ?? near.flatMap(({ retest }) => retest)
  const asked = [...new Set([...untested(plan), ...afterSteps])]
  const how = say('plan.how.sample')
  if (asked.length === 0) return [say('handout.retest.week'), how]
  const hours = last?.at ?? Math.min(WEEK, Math.max(0, ...near.map(({ at, wait }) => at + wait)))
  const time = after(start, hours)
  const readings = asked.map((name) => labelInside(name, reader.catalog.quantities.get(name)?.row))
  return [
    say('handout.retest.what', { readings, date: weekdayWords(time), clock: clockWords(time) }),
    ...(near.length < plan.steps.length ? [say('handout.retest.later')] : []),
    how,
  ]
}

/** What has to be tested before anyone can say whether people may swim. */
function untested({ swim }: Plan): readonly string[] {
  const unknown = { 'plan.swim.ph_unknown': 'ph', 'plan.swim.chlorine_unknown': 'free_chlorine' }
  return Object.entries(unknown).flatMap(([key, name]) => (swim.reasons.some((one) => one.key === key) ? [name] : []))
}

/** What follows after the week, a line each: it goes by the new test. */
function laterOf(plan: Plan, reader: Reader, start: Date): readonly string[] {
  return plan.steps.flatMap((step, index) =>
    step.at <= WEEK
      ? []
      : [
          say('handout.later_step', {
            step: index + 1,
            date: weekdayWords(after(start, step.at)),
            says: planSentence(reader, step.says),
          }),
        ],
  )
}

/** What the plan leaves out and what its end does not meet, for the second page. */
function leftOut(plan: Plan, reader: Reader): readonly string[] {
  const name = (quantity: string) =>
    quantity === 'cell'
      ? say('worksheet.generator.label')
      : labelOf(quantity, reader.catalog.quantities.get(quantity)?.row)
  const out = plan.verdicts
    .filter(({ verdict, reason }) => verdict === 'left_out' && reason.key !== 'plan.verdict.failed_gate')
    .map(({ quantity, reason }) =>
      say('handout.found.other', {
        name: name(quantity),
        says: planSentence(reader, { key: reason.key, facts: { quantity, ...reason.facts, reading: quantity } }),
      }),
    )
  const unmet = plan.unmet.map(({ quantity, problem }) => problemSentence(problem, name(quantity)))
  return [...out, ...unmet]
}
