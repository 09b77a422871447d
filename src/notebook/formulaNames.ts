import { isProblem, type Problem, problem } from '../words/problem'
import { say } from '../words/say'
import type { Expression } from '../worksheet/formula'
import { parseFormula } from '../worksheet/parse'
import { visit } from '../worksheet/visit'
import type { Notebook } from './notebook'
import { own } from './own'
import { BASELINE, nameKey, scenarioNamed } from './scenarioName'

type Name = Extract<Expression, { kind: 'name' }>

/**
 * The formula as a cell keeps it: another scenario is named by its id, so that renaming it breaks nothing.
 * `'Drain a third'.ph` is kept as `'V1StGXR8_Z5jdHi6B-myT'.ph`; `baseline.ph` stays, for it means the first scenario
 * whichever that is.
 * @returns a problem when the formula cannot be read or names a scenario that is not there
 */
export function toStored(text: string, notebook: Notebook): string | Problem {
  return withNames(text, ({ of, name }) => {
    if (nameKey(of) === BASELINE) return `${BASELINE}.${name}`
    const scenario = scenarioNamed(notebook, of)
    return scenario === undefined
      ? problem('formula_no_such_scenario', [], { name: of })
      : `${quoted(scenario.id)}.${name}`
  })
}

/** The formula as a reader sees and edits it: scenarios by name; one that is no longer there says so. */
export function toShown(stored: string, notebook: Notebook): string {
  const shown = withNames(stored, ({ of, name }) => {
    const scenario = own(notebook.scenarios, of)
    return `${quoted(scenario?.name ?? say('formula.removed_scenario'))}.${name}`
  })
  return isProblem(shown) ? stored : shown
}

/** The formula's text with each name of another scenario written anew. */
function withNames(text: string, write: (name: Name & { of: string }) => string | Problem): string | Problem {
  const formula = parseFormula(text)
  if (isProblem(formula)) return formula
  let written = ''
  let done = 0
  for (const name of namesIn(formula.tree)) {
    if (!name.quoted || name.of === null) continue
    const anew = write({ ...name, of: name.of })
    if (isProblem(anew)) return anew
    written += text.slice(done, name.from) + anew
    done = name.to
  }
  return written + text.slice(done)
}

/** The names of a formula as they stand in it, from left to right. */
export function namesIn(tree: Expression): readonly Name[] {
  const names: Name[] = []
  visit(tree, (node) => {
    if (node.kind === 'name') names.push(node)
  })
  return names
}

function quoted(name: string): string {
  return `'${name.replaceAll("'", "''")}'`
}
