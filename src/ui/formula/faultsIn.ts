import { FUNCTIONS } from '../../functions/registry'
import { namesIn } from '../../notebook/formulaNames'
import type { Notebook } from '../../notebook/notebook'
import { BASELINE, nameKey as scenarioKey, scenarioNamed } from '../../notebook/scenarioName'
import { isProblem, type Problem, problem } from '../../words/problem'
import type { Outline } from '../../worksheet/catalog'
import { catalogUnits } from '../../worksheet/catalogUnits'
import type { Expression } from '../../worksheet/formula'
import { formulaProblems } from '../../worksheet/formulaProblems'
import { knownNames } from '../../worksheet/knownNames'
import { parseFormula } from '../../worksheet/parse'
import { unitFlags } from '../../worksheet/unitCheck'

/** What is wrong with a formula as it is written, and where in its text. */
export interface Fault {
  readonly problem: Problem
  readonly from: number
  readonly to: number
  /** it can be worked out, but its units do not agree */
  readonly ofUnits: boolean
}

export interface FaultScope {
  readonly notebook: Notebook
  readonly catalog: Outline
  /** the unit of the row; null where nothing is asked of it */
  readonly unit: string | null
}

/** Scenarios are named here as people name them, not by id. */
export function faultsIn(text: string, { notebook, catalog, unit }: FaultScope): readonly Fault[] {
  const formula = parseFormula(text)
  if (isProblem(formula)) return [unreadable(formula, text)]
  const lost = namesIn(formula.tree).flatMap(({ of, quoted, from, to }): Fault[] => {
    const isThere = of === null || !quoted || scenarioKey(of) === BASELINE || scenarioNamed(notebook, of) !== undefined
    if (isThere) return []
    return [{ problem: problem('formula_no_such_scenario', [], { name: of ?? '' }), from, to, ofUnits: false }]
  })
  const known = knownNames(catalog)
  const scope = { visible: known, known, functions: FUNCTIONS, shipped: false }
  const wrong = formulaProblems(formula.tree, scope, []).map((found) => placed(found, formula.tree, text))
  if (lost.length + wrong.length > 0) return [...lost, ...wrong]
  const units = catalogUnits({ ...catalog, functions: FUNCTIONS })
  return unitFlags(formula.tree, units, unit).map((flag) => ({ ...flag, ofUnits: true }))
}

/** What cannot be read is marked at its place; what is missing at the end, at the last character. */
function unreadable(found: Problem, text: string): Fault {
  const { at, found: word } = found.facts
  const from = typeof at === 'number' ? at - 1 : Math.max(text.trimEnd().length - 1, 0)
  const length = typeof word === 'string' && typeof at === 'number' ? word.length : 1
  return { problem: found, from, to: Math.min(from + length, text.length), ofUnits: false }
}

function placed(found: Problem, tree: Expression, text: string): Fault {
  const from = Number(found.facts.at ?? 1) - 1
  const name = String(found.facts.name ?? '')
  const to = text.slice(from, from + name.length).toUpperCase() === name.toUpperCase() ? from + name.length : tree.to
  return { problem: found, from, to: Math.max(to, from), ofUnits: false }
}
