import { FUNCTIONS } from '../functions/registry'
import { isProblem, type Problem, problem } from '../words/problem'
import type { Outline } from '../worksheet/catalog'
import { catalogUnits } from '../worksheet/catalogUnits'
import { formulaProblems } from '../worksheet/formulaProblems'
import { knownNames } from '../worksheet/knownNames'
import { parseFormula } from '../worksheet/parse'
import { unitFlags } from '../worksheet/unitCheck'
import { namesIn } from './formulaNames'
import type { Notebook } from './notebook'

/**
 * Why a formula, as a cell keeps it, cannot stand in this notebook: it cannot be read, or it names or calls what is not
 * there. A cell may use every quantity, whichever worksheet has it. Circles are asked of `checkCircle`.
 * @param unit where it is given, the formula's units have to agree with one another and with it
 */
export function checkFormula(notebook: Notebook, catalog: Outline, stored: string, unit?: string): Problem | null {
  const formula = parseFormula(stored)
  if (isProblem(formula)) return formula
  const gone = namesIn(formula.tree).some(
    ({ of, quoted }) => of !== null && quoted && !Object.hasOwn(notebook.scenarios, of),
  )
  if (gone) return problem('formula_scenario_gone')
  const known = knownNames(catalog)
  const scope = { visible: known, known, functions: FUNCTIONS, shipped: false }
  const [wrong] = formulaProblems(formula.tree, scope, [])
  if (wrong || unit === undefined) return wrong ?? null
  return unitFlags(formula.tree, catalogUnits({ ...catalog, functions: FUNCTIONS }), unit)[0]?.problem ?? null
}
