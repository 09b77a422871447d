import type { Value } from '../../functions/define'
import { bandFor, conditionsOf } from '../../worksheet/bandFor'
import type { Answer, Answers, Bench, Column } from '../bench'
import { withTestErrors } from '../rules'
import type { CaseCatalog } from './caseCatalog'
import type { CaseSource } from './caseDefinition'

/** Whether a condition is true; where it cannot be told, what would tell it (alternatives joined with `|`). */
export type Told = { readonly truth: 'yes' | 'no' } | { readonly truth: 'unknown'; readonly names: readonly string[] }

/** What the worksheets say of a quantity that a case shows. */
export type Shown =
  | { readonly quantity: string; readonly value: Value }
  | { readonly quantity: string; readonly names: readonly string[] }

/** How a case stands in one water. */
export interface CaseStanding {
  readonly source: CaseSource
  /** by the place of its formula in the file: `when`, `gates.0.when` */
  readonly conditions: ReadonlyMap<string, Told>
  /** targets of the plan while it holds */
  readonly sets: Readonly<Record<string, number>>
  readonly shown: ReadonlyMap<string, Shown>
}

/** How each case stands in a water: one column for all of them. */
export function standings(
  bench: Bench,
  { cases, rules }: Pick<CaseCatalog, 'cases' | 'rules'>,
  column: Column,
): readonly CaseStanding[] {
  const answers = bench.evaluate([withRanges(bench, withTestErrors(column, rules))], formulasOf(cases))[0] ?? NOTHING
  return cases.map(({ source, rows }) => {
    const conditions = new Map<string, Told>()
    const sets: Record<string, number> = {}
    for (const { path, row } of rows) {
      const answer = answers.get(row)
      if (path[0] !== 'sets') conditions.set(path.join('.'), toldBy(answer))
      else if (answer && 'value' in answer && typeof answer.value === 'number') sets[String(path[1])] = answer.value
    }
    return { source, conditions, sets, shown: new Map() }
  })
}

/** The same cases with what they show: of the water with the targets that each sets. */
export function showing(
  bench: Bench,
  { rules }: Pick<CaseCatalog, 'rules'>,
  cases: readonly CaseStanding[],
  column: Column,
): readonly CaseStanding[] {
  const given = withTestErrors(column, rules)
  return cases.map((standing) => {
    const tells = tellsOf(standing.source)
    const water = new Map([...given, ...Object.entries(standing.sets)])
    const answers = (tells.length === 0 ? undefined : bench.evaluate([water], tells)[0]) ?? NOTHING
    return { ...standing, shown: new Map(tells.map((name) => [name, shownOf(name, water, answers.get(name))])) }
  })
}

const NOTHING: Answers = new Map<string, Answer>()

/** The same list for the same cases, so that what works it out is set up once. */
function formulasOf(cases: CaseCatalog['cases']): readonly string[] {
  const made = formulas.get(cases) ?? cases.flatMap(({ rows }) => rows.map(({ row }) => row))
  formulas.set(cases, made)
  return made
}
const formulas = new WeakMap<CaseCatalog['cases'], readonly string[]>()

function tellsOf(source: CaseSource): readonly string[] {
  const made = tells.get(source) ?? [
    ...new Set(source.definition.steps.flatMap((step) => ('id' in step ? (step.tells ?? []) : []))),
  ]
  tells.set(source, made)
  return made
}
const tells = new WeakMap<CaseSource, readonly string[]>()

export function told({ conditions }: CaseStanding, ...path: (string | number)[]): Told {
  return conditions.get(path.join('.')) ?? { truth: 'unknown', names: [] }
}

function toldBy(answer: Answer | undefined): Told {
  if (answer && 'value' in answer) return { truth: answer.value === true ? 'yes' : 'no' }
  return { truth: 'unknown', names: namesIn(answer) }
}

function namesIn(answer: Answer | undefined): readonly string[] {
  const names = answer && 'problem' in answer ? answer.problem.facts.names : undefined
  return Array.isArray(names) ? names : []
}

function shownOf(quantity: string, column: Column, answer: Answer | undefined): Shown {
  const value = answer && 'value' in answer ? answer.value : column.get(quantity)
  return value === undefined ? { quantity, names: namesIn(answer) } : { quantity, value }
}

/** Where a range has no end, nothing lies past it. */
const NO_END = 1e9

/** The ends of the range that holds for each quantity in this pool. */
function withRanges({ catalog }: Bench, column: Column): Column {
  const ranges = new Map(column)
  for (const { row } of catalog.quantities.values()) {
    if (!row.target) continue
    const band = bandFor(row, Object.fromEntries(conditionsOf(row).map((name) => [name, column.get(name)])))
    ranges.set(`range_low_${row.name}`, band?.low ?? -NO_END)
    ranges.set(`range_high_${row.name}`, band?.high ?? NO_END)
  }
  return ranges
}
