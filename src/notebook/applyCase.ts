import { type Problem, problem } from '../words/problem'
import type { SimplyApplied } from './applied'
import type { PutCase, SimpleEdit } from './edit'
import { LIMITS } from './limits'
import type { Notebook } from './notebook'
import { own, withEntry, withoutEntry } from './own'

/** A case file of the reader's own; what it says is asked of the planner. */
export function putCase(notebook: Notebook, { id, definition }: PutCase): SimplyApplied | Problem {
  if (!(typeof definition === 'object' && definition !== null && 'id' in definition && definition.id === id))
    return problem('case_id', [], { id })
  const before = own(notebook.cases, id)
  if (before === undefined && Object.keys(notebook.cases).length >= LIMITS.cases)
    return problem('too_many_cases', [], { most: LIMITS.cases })
  const inverse: SimpleEdit =
    before === undefined ? { type: 'remove_case', id } : { type: 'put_case', id, definition: before }
  return { notebook: { ...notebook, cases: withEntry(notebook.cases, id, definition) }, inverse, history: 'step' }
}

/** Scenarios that chose it keep its name: where it is put back, they follow it again. */
export function removeCase(notebook: Notebook, id: string): SimplyApplied | Problem {
  const definition = own(notebook.cases, id)
  if (definition === undefined) return problem('case_gone', [], { id })
  return {
    notebook: { ...notebook, cases: withoutEntry(notebook.cases, id) },
    inverse: { type: 'put_case', id, definition },
    history: 'step',
  }
}

/** A value of the plan's rules; null takes it back to the shipped one. */
export function setRule(notebook: Notebook, rule: string, value: number | null): SimplyApplied | Problem {
  const before = own(notebook.rules, rule) ?? null
  const inverse: SimpleEdit = { type: 'set_rule', rule, value: before }
  if (before === value) return { notebook, inverse, history: 'none' }
  if (before === null && Object.keys(notebook.rules).length >= LIMITS.entries)
    return problem('too_many_rules', [], { most: LIMITS.entries })
  const rules = value === null ? withoutEntry(notebook.rules, rule) : withEntry(notebook.rules, rule, value)
  return { notebook: { ...notebook, rules }, inverse, history: 'step' }
}
