import type { Value } from '../functions/define'
import type { Problem } from '../words/problem'
import { bandFor, conditionsOf } from '../worksheet/bandFor'
import type { Band } from '../worksheet/definition'
import { type Answers, type Bench, type Column, workedOut } from './bench'
import { type PlanRules, ruleValue } from './rules'
import type { Shelf } from './shelf'
import type { PlanCase, Say, Step, Unmet, Verdict, VerdictKind } from './step'

/** A plan while it is made: the water as it stands after the steps so far, and the clock. */
export interface Draft {
  readonly bench: Bench
  readonly rules: PlanRules
  readonly shelf: Shelf
  /** the readings as they were taken */
  readonly taken: Column
  /** the water as it was last tested; the chlorine target follows the stabilizer in here */
  measured: Column
  column: Column
  answers: Answers
  /** hours since the start */
  hour: number
  /** products used on the present day */
  today: { day: number; products: Set<string> }
  readonly steps: Step[]
  readonly verdicts: Verdict[]
  readonly unmet: Unmet[]
  /** readings that are only a limit: more than, or less than, what the test can tell */
  readonly censored: ReadonlySet<string>
  /** stages that a rule or a case keeps out: salt, cell, chlorine ... each with the rule, or `case.<id>` */
  readonly refused: Map<string, string>
  /** products that a case keeps out */
  readonly barred: ReadonlySet<string>
  /** m³ in which water that is let out is counted */
  readonly drainStep: number
  readonly cases: readonly PlanCase[]
  /** a case wants the pH right before chlorine goes in */
  readonly phFirst: boolean
  /** readings that no step may rest on until they are tested again, each with the rule that says so */
  readonly unusable: Map<string, string>
  /** the pool has a cell: something of it is given */
  readonly hasCell: boolean
  /** whether the cell makes chlorine at this moment */
  cellRuns: boolean
  /** a step had the cell switched off */
  cellOff: boolean
  /** the chlorine is not known any more: time went by, and the demand is not known */
  chlorineLost: boolean
  /** hours that went by without the cell since chlorine last went in */
  sinceChlorine: number
  /** how far the readings of salt are apart, mg/L; undefined where there is one alone */
  readonly saltApart: number | undefined
  /** salt was read, or will be, by two methods since it last changed */
  secondSaltReading: boolean
  /** there is metal in the water that chlorine would lay down as a stain */
  metals: boolean
  /** why the cell stays off */
  readonly cellReasons: Say[]
  /** the salt that the plan ends with, where salt is still to go in */
  finalSalt: number | undefined
  /** when bicarbonate or soda ash last went in */
  carbonateAt: number | undefined
  /** what has to go in before the water is left to the air for days: today's chlorine, where pH came first */
  beforeAir: (() => void) | undefined
  /** no chlorine goes in: a gate or the rule of another sanitizer says so */
  noChlorine: boolean
  complete: boolean
}

type Changes = Readonly<Record<string, Value | undefined>>

/** A column with some values set, and those that are undefined taken out. */
export function changed(column: Column, changes: Changes): Column {
  const next = new Map(column)
  for (const [name, value] of Object.entries(changes)) {
    if (value === undefined) next.delete(name)
    else next.set(name, value)
  }
  return next
}

/** The answers for the present water with some values set. */
export function look(draft: Draft, changes: Changes): Answers {
  return answersTo(draft.bench, changed(draft.column, changes))
}

/** What the worksheets say of one water. */
export function answersTo(bench: Bench, column: Column): Answers {
  return workedOut(bench, [column])[0] ?? new Map()
}

/** Moves the plan on to another water. */
export function moveTo(draft: Draft, changes: Changes): void {
  draft.column = changed(draft.column, changes)
  draft.answers = answersTo(draft.bench, draft.column)
}

export function numberIn(answers: Answers, name: string): number | undefined {
  const answer = answers.get(name)
  return answer && 'value' in answer && typeof answer.value === 'number' ? answer.value : undefined
}

export function truthIn(answers: Answers, name: string): boolean | undefined {
  const answer = answers.get(name)
  return answer && 'value' in answer && typeof answer.value === 'boolean' ? answer.value : undefined
}

export function problemIn(answers: Answers, name: string): Problem | undefined {
  const answer = answers.get(name)
  return answer && 'problem' in answer ? answer.problem : undefined
}

/** A number of the present water: as it stands in the column, else as it is worked out. */
export function numberOf(draft: Draft, name: string): number | undefined {
  const value = draft.column.get(name)
  return typeof value === 'number' ? value : numberIn(draft.answers, name)
}

export function choiceOf(draft: Draft, name: string): string | undefined {
  const value = draft.column.get(name)
  return typeof value === 'string' ? value : undefined
}

/** A reading that a step may rest on: taken, and stopped by no gate. */
export function usable(draft: Draft, name: string): number | undefined {
  return draft.unusable.has(name) ? undefined : numberOf(draft, name)
}

export function rule(draft: Draft, id: string, name: string): number | undefined {
  return ruleValue(draft.rules, id, name)
}

export function holds(draft: Draft, id: string): boolean {
  return draft.rules.rules.has(id)
}

/** The ids, in order, of those rules that hold. */
export function holding(draft: Draft, ...ids: readonly string[]): readonly string[] {
  return [...new Set(ids)].filter((id) => holds(draft, id))
}

export function testError(draft: Draft, name: string): number {
  return draft.rules.testErrors.get(name) ?? 0
}

/** The range that holds for a quantity in this pool, by shell, use, setting and the chosen set. */
export function bandOf(draft: Draft, name: string, water: Column = draft.column): Band | undefined {
  const row = draft.bench.catalog.quantities.get(name)?.row
  if (!row) return undefined
  const values = conditionsOf(row).map((condition) => [condition, water.get(condition)] as const)
  return bandFor(row, Object.fromEntries(values))
}

export function say(key: string, facts: Say['facts'] = {}): Say {
  return { key, facts }
}

/** Says what comes of a quantity; the first word on it stands. */
export function verdict(draft: Draft, quantity: string, kind: VerdictKind, reason: Say): void {
  if (!draft.verdicts.some((v) => v.quantity === quantity)) draft.verdicts.push({ quantity, verdict: kind, reason })
}

export function unmet(draft: Draft, quantity: string, problem: Problem): void {
  if (!draft.unmet.some((u) => u.quantity === quantity)) draft.unmet.push({ quantity, problem })
}
