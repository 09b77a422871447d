import type { Notebook } from '../../notebook/notebook'
import type { PlanRecord } from '../../notebook/record'
import { instant, isAfter } from '../../record/instant'
import { type Measured, measuredOf } from '../../record/measured'
import { thisMinute } from './today'

const MINUTE = 60_000
const HOUR = 60 * MINUTE

/**
 * When a step of a plan was most likely done: at the time that the plan gave it, before the next test (which has it in its
 * water) and not after this moment. Whoever marks a step does so at the next visit; dated to that, it would stand after its own test.
 */
export function plannedTime(
  notebook: Pick<Notebook, 'samples'>,
  { date, sample, steps }: Pick<PlanRecord, 'date' | 'sample' | 'steps'>,
  at: number,
  now = new Date(),
): string {
  const start = instant(date)
  if (Number.isNaN(start)) return thisMinute(now)
  const next = measuredOf(notebook).find((test) => isNext(test, date, sample))
  const before = next === undefined ? Number.POSITIVE_INFINITY : instant(next.date) - MINUTE
  const planned = Math.max(start, Math.min(start + (steps[at]?.at ?? 0) * HOUR, before))
  return thisMinute(new Date(Math.min(planned, now.getTime())))
}

function isNext({ id, date }: Measured, plan: string, sample: string | null): boolean {
  return id !== sample && isAfter(date, plan) === true
}
