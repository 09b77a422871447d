import { isProblem, type Problem } from '../words/problem'
import type { Check, Refusal } from './catalog'
import type { Row, Refusal as Written } from './definition'
import type { Formula } from './formula'
import { formulaProblems, type Scope } from './formulaProblems'
import { parseFormula } from './parse'
import type { Path } from './place'
import { refusalProblem } from './refusalProblem'

export interface RowFormulas {
  readonly formula: Formula | null
  readonly checks: readonly Check[]
  readonly refusals: readonly Refusal[]
}

/** A row's formula, checks and refusals, parsed; what is wrong with them goes to `problems`. An input has none. */
export function rowFormulas(
  row: Row,
  path: Path,
  scope: Scope,
  ofWorksheet: readonly Refusal[],
  problems: Problem[],
): RowFormulas {
  if (!('formula' in row)) return { formula: null, checks: [], refusals: [] }
  const checks = (row.checks ?? []).flatMap(({ notice, when }, i): Check[] => {
    const formula = read(when, [...path, 'checks', i, 'when'], scope, problems)
    return formula ? [{ notice, when: formula }] : []
  })
  const own = refusalsOf(row.refuses, path, scope, problems)
  const formula = read(row.formula, [...path, 'formula'], scope, problems)
  return { formula, checks, refusals: [...ofWorksheet, ...own] }
}

export function refusalsOf(
  written: readonly Written[] | undefined,
  path: Path,
  scope: Scope,
  problems: Problem[],
): readonly Refusal[] {
  return (written ?? []).flatMap((refusal, i): Refusal[] => {
    const when = read(refusal.when, [...path, 'refuses', i, 'when'], scope, problems)
    return when ? [{ reason: refusalProblem(refusal.problem), when }] : []
  })
}

const known = new Map<string, Formula>()

function read(text: string, path: Path, scope: Scope, problems: Problem[]): Formula | null {
  const formula = known.get(text) ?? parseFormula(text, path)
  if (isProblem(formula)) {
    problems.push(formula)
    return null
  }
  // The shipped ones are read again whenever a worksheet or row of the reader's own comes or goes.
  if (scope.shipped) known.set(text, formula)
  problems.push(...formulaProblems(formula.tree, scope, path))
  return formula
}
