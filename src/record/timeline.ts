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

/** All that the record of this pool has, the last first; what has no date stands at the end. */
export function timeline(notebook: Notebook): readonly Event[] {
  const samples = Object.values(notebook.samples).filter(({ elsewhere }) => !elsewhere)
  const events: Event[] = [
    ...samples.map((sample) => ({ kind: 'sample', date: sample.date, id: sample.id, sample }) as const),
    ...Object.values(notebook.plans).map((plan) => ({ kind: 'plan', date: plan.date, id: plan.id, plan }) as const),
    ...Object.values(notebook.additions).map(
      (addition) => ({ kind: 'addition', date: addition.date, id: addition.id, addition }) as const,
    ),
    ...Object.values(notebook.remarks).map(
      (remark) => ({ kind: 'remark', date: remark.date, id: remark.id, remark }) as const,
    ),
    ...Object.values(notebook.lessons).map(
      (lesson) => ({ kind: 'lesson', date: lesson.date, id: lesson.id, lesson }) as const,
    ),
  ]
  return events.sort((a, b) => {
    if (a.date === '' || b.date === '') return Number(a.date === '') - Number(b.date === '')
    return whenOf(b) - whenOf(a) || USUAL[b.kind] - USUAL[a.kind]
  })
}

function whenOf({ date, kind }: Event): number {
  return instant(date) + (date.includes('T') ? 0 : USUAL[kind] * 3_600_000)
}
