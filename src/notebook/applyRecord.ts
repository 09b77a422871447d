import { isProblem, type Problem, problem } from '../words/problem'
import type { SimplyApplied } from './applied'
import type { RecordEdit, SimpleEdit } from './edit'
import { LIMITS } from './limits'
import type { Notebook } from './notebook'
import { own, withEntry, withoutEntry } from './own'

type Entries<T> = Readonly<Record<string, T>>

/** Changes of the pool's record. A plan that was given can be taken out, and put back as it was; it is never another. */
export function applyRecord(notebook: Notebook, edit: RecordEdit): SimplyApplied | Problem {
  const { plans, additions, remarks, lessons } = notebook
  switch (edit.type) {
    case 'put_plan_record':
      if (own(plans, edit.plan.id) !== undefined) return problem('plan_given_already')
      return done(notebook, put(plans, edit.plan, LIMITS.plans), (next) => ({ plans: next }), {
        type: 'remove_plan_record',
        plan: edit.plan.id,
      })
    case 'remove_plan_record': {
      const plan = own(plans, edit.plan)
      if (plan === undefined) return problem('plan_record_gone')
      const inverse: SimpleEdit = { type: 'put_plan_record', plan }
      return done(notebook, withoutEntry(plans, edit.plan), (next) => ({ plans: next }), inverse)
    }
    case 'put_addition': {
      const { addition } = edit
      const before = own(additions, addition.id)
      const inverse: SimpleEdit =
        before === undefined
          ? { type: 'remove_addition', addition: addition.id }
          : { type: 'put_addition', addition: before }
      return done(notebook, put(additions, addition, LIMITS.additions), (next) => ({ additions: next }), inverse)
    }
    case 'remove_addition': {
      const addition = own(additions, edit.addition)
      if (addition === undefined) return problem('addition_gone')
      const inverse: SimpleEdit = { type: 'put_addition', addition }
      return done(notebook, withoutEntry(additions, edit.addition), (next) => ({ additions: next }), inverse)
    }
    case 'put_remark': {
      const { remark } = edit
      const before = own(remarks, remark.id)
      const inverse: SimpleEdit =
        before === undefined ? { type: 'remove_remark', remark: remark.id } : { type: 'put_remark', remark: before }
      return done(notebook, put(remarks, remark, LIMITS.additions), (next) => ({ remarks: next }), inverse)
    }
    case 'remove_remark': {
      const remark = own(remarks, edit.remark)
      if (remark === undefined) return problem('remark_gone')
      const inverse: SimpleEdit = { type: 'put_remark', remark }
      return done(notebook, withoutEntry(remarks, edit.remark), (next) => ({ remarks: next }), inverse)
    }
    case 'put_lesson': {
      const { lesson } = edit
      const before = own(lessons, lesson.id)
      const inverse: SimpleEdit =
        before === undefined ? { type: 'remove_lesson', lesson: lesson.id } : { type: 'put_lesson', lesson: before }
      return done(notebook, put(lessons, lesson, LIMITS.additions), (next) => ({ lessons: next }), inverse)
    }
    case 'remove_lesson': {
      const lesson = own(lessons, edit.lesson)
      if (lesson === undefined) return problem('lesson_gone')
      const inverse: SimpleEdit = { type: 'put_lesson', lesson }
      return done(notebook, withoutEntry(lessons, edit.lesson), (next) => ({ lessons: next }), inverse)
    }
  }
}

function put<T extends { readonly id: string }>(all: Entries<T>, entry: T, most: number): Entries<T> | Problem {
  const isNew = own(all, entry.id) === undefined
  return isNew && Object.keys(all).length >= most
    ? problem('record_full', [], { most })
    : withEntry(all, entry.id, entry)
}

function done<T>(
  notebook: Notebook,
  next: Entries<T> | Problem,
  part: (next: Entries<T>) => Partial<Notebook>,
  inverse: SimpleEdit,
): SimplyApplied | Problem {
  // a record of entries could bear the names of a problem's parts: only a problem has a list for its path
  if (isProblem(next) && Array.isArray(next.path)) return next
  return { notebook: { ...notebook, ...part(next as Entries<T>) }, inverse, history: 'step' }
}
