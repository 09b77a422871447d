import { FUNCTIONS } from '../functions/registry'
import { isProblem, type Problem, problem } from '../words/problem'
import type { Outline } from '../worksheet/catalog'
import { formulaProblems } from '../worksheet/formulaProblems'
import { parseFormula } from '../worksheet/parse'
import { namesIn } from './formulaNames'
import type { Notebook } from './notebook'

/**
 * Why a formula, as a cell keeps it, cannot stand in this notebook: it cannot be read, or it names or calls what is not
 * there. A cell may use every quantity, whichever worksheet has it. Circles are asked of `checkCircle`.
 */
export function checkFormula(notebook: Notebook, catalog: Outline, stored: string): Problem | null {
  const formula = parseFormula(stored)
  if (isProblem(formula)) return formula
  const gone = namesIn(formula.tree).some(
    ({ of, quoted }) => of !== null && quoted && !Object.hasOwn(notebook.scenarios, of),
  )
  if (gone) return problem('formula_scenario_gone')
  const known = knownNames(catalog)
  const scope = { visible: known, known, functions: FUNCTIONS, shipped: false }
  return formulaProblems(formula.tree, scope, [])[0] ?? null
}

const names = new WeakMap<Outline, ReadonlySet<string>>()

function knownNames(catalog: Outline): ReadonlySet<string> {
  const before = names.get(catalog)
  if (before !== undefined) return before
  const outputs = [...catalog.solves.values()].flatMap((solve) =>
    solve.outputs.map((output) => `${solve.id}.${output}`),
  )
  const known = new Set([...catalog.quantities.keys(), ...outputs])
  names.set(catalog, known)
  return known
}
