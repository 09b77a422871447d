import { isSolve, type LockedFunction } from '../functions/define'
import { type Problem, problem } from '../words/problem'
import type { Expression } from './formula'
import { type Arity, GENERAL_FUNCTIONS } from './generalFunctions'
import { isScenario, nameKey } from './nameKey'
import { visit } from './visit'

/** What a formula of one worksheet may use. */
export interface Scope {
  /** quantities and solve outputs of this worksheet, and those that it takes */
  readonly visible: ReadonlySet<string>
  /** quantities and solve outputs of all worksheets */
  readonly known: ReadonlySet<string>
  readonly functions: ReadonlyMap<string, LockedFunction>
  readonly shipped: boolean
  /** solves that are wrong themselves: what reads their outputs is not told that they are unknown, too */
  readonly unsettled?: ReadonlySet<string>
}

/** Every name and call of a tree that means nothing in this scope, or is called wrongly. */
export function formulaProblems(tree: Expression, scope: Scope, path: Problem['path']): Problem[] {
  const problems: Problem[] = []
  visit(tree, (node) => {
    const at = node.from + 1
    if (node.kind === 'name') {
      const name = nameKey(node)
      if (name !== node.name && scope.unsettled?.has(node.of ?? '')) return
      if (!scope.known.has(name)) problems.push(unknownName(name, scope, path, at))
      else if (!scope.visible.has(name)) problems.push(problem('formula_name_not_taken', path, { name, at }))
      if (scope.shipped && isScenario(node)) problems.push(problem('formula_other_scenario', path, { name, at }))
    }
    if (node.kind === 'call') problems.push(...callProblems(node, scope, path, at))
  })
  return problems
}

function unknownName(name: string, { known }: Scope, path: Problem['path'], at: number): Problem {
  const meant = name.toLowerCase()
  return known.has(meant)
    ? problem('formula_name_in_capitals', path, { name, at, meant })
    : problem('formula_unknown_name', path, { name, at })
}

function callProblems(
  call: Extract<Expression, { kind: 'call' }>,
  { functions }: Scope,
  path: Problem['path'],
  at: number,
): Problem[] {
  const name = call.function
  const locked = functions.get(name)
  if (locked && isSolve(locked)) return [problem('formula_calls_solve', path, { name, at })]
  const arity = locked ? arityOf(locked) : GENERAL_FUNCTIONS.get(name)
  if (!arity) return [problem('formula_unknown_function', path, { name, at })]
  const [least, most] = arity
  const found = call.arguments.length
  if (found >= least && found <= most) return []
  const accepted = least === most ? String(least) : `${least}–${most}`
  return [problem('formula_argument_count', path, { name, at, found, accepted })]
}

/** Trailing optional parameters may be left out. */
function arityOf({ parameters }: LockedFunction): Arity {
  return [parameters.findLastIndex((parameter) => !parameter.optional) + 1, parameters.length]
}
