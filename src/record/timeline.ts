import type { Notebook, Sample } from '../notebook/notebook'
import type { Addition, Lesson, PlanRecord, Remark } from '../notebook/record'
import { instant } from './instant'

/** One thing in the pool's record. */
export type Event =
  | { readonly kind: 'sample'; readonly date: string; readonly id: string; readonly sample: Sample }
  | { readonly kind: 'plan'; readonly date: string; readonly id: string; readonly plan: PlanRecord }
  | { readonly kind: 'addition'; readonly date: string; readonly id: string; readonly addition: Addition }
  | { readonly kind: 'remark'; readonly date: string; readonly id: string; readonly remark: Remark }
  | { readonly kind: 'lesson'; readonly date: string; readonly id: string; readonly lesson: Lesson }

/** The time of day, in hours, at which something stands that has a date alone: what was added was added after the test. */
const USUAL = { sample: 0, plan: 12, addition: 23.7, remark: 23.8, lesson: 23.9 } as const

const known = new WeakMap<object, Event>()

/** The same event for the same thing, so that what is unfolded on the page stays so when something else is written down. */
function eventOf(thing: object, event: Event): Event {
  const before = known.get(thing)
  if (before !== undefined) return before
  known.set(thing, event)
  return event
}

/** All that the record of this pool has, the last first; what has no date stands at the end. */
export function timeline(notebook: Notebook): readonly Event[] {
  const samples = Object.values(notebook.samples).filter(({ elsewhere }) => !elsewhere)
  const { plans, additions, remarks, lessons } = notebook
  const dated = ({ date, id }: { readonly date: string; readonly id: string }) => ({ date, id })
  const events: Event[] = [
    ...samples.map((sample) => eventOf(sample, { kind: 'sample', ...dated(sample), sample })),
    ...Object.values(plans).map((plan) => eventOf(plan, { kind: 'plan', ...dated(plan), plan })),
    ...Object.values(additions).map((one) => eventOf(one, { kind: 'addition', ...dated(one), addition: one })),
    ...Object.values(remarks).map((remark) => eventOf(remark, { kind: 'remark', ...dated(remark), remark })),
    ...Object.values(lessons).map((lesson) => eventOf(lesson, { kind: 'lesson', ...dated(lesson), lesson })),
  ]
  return events.sort((a, b) => {
    if (a.date === '' || b.date === '') return Number(a.date === '') - Number(b.date === '')
    return whenOf(b) - whenOf(a) || USUAL[b.kind] - USUAL[a.kind]
  })
}

function whenOf({ date, kind }: Event): number {
  return instant(date) + (date.includes('T') ? 0 : USUAL[kind] * 3_600_000)
}
