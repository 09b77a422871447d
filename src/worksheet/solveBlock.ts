import { isSolve, type LockedFunction } from '../functions/define'
import { type Problem, problem } from '../words/problem'
import type { SolveBlock } from './catalog'
import type { SolveDefinition } from './definition'
import type { Placed } from './place'

/** A solve as the catalog knows it, or all that is wrong with its declaration. `rowProblem` judges a quantity's name. */
export function solveBlock(
  { item, source, path }: Placed<SolveDefinition>,
  functions: ReadonlyMap<string, LockedFunction>,
  rowProblem: (name: string, path: Problem['path']) => Problem | null,
): SolveBlock | Problem[] {
  const f = functions.get(item.function)
  const name = item.function
  if (!f) return [problem('solve_unknown_function', [...path, 'function'], { name })]
  if (!isSolve(f)) return [problem('solve_of_one_result', [...path, 'function'], { name })]
  const problems: Problem[] = []
  const parameters = new Set(f.parameters.map((parameter) => parameter.name))
  for (const [parameter, quantity] of Object.entries(item.inputs)) {
    const here = [...path, 'inputs', parameter]
    if (!parameters.has(parameter)) {
      problems.push(
        problem('solve_unknown_input', here, { name: parameter, function: name, accepted: [...parameters] }),
      )
    }
    const wrong = rowProblem(quantity, here)
    if (wrong) problems.push(wrong)
  }
  for (const parameter of f.parameters) {
    if (parameter.optional || Object.hasOwn(item.inputs, parameter.name)) continue
    problems.push(problem('solve_input_missing', [...path, 'inputs'], { name: parameter.name, function: name }))
  }
  if (problems.length > 0) return problems
  return {
    id: item.id,
    worksheet: source.definition.id,
    function: name,
    inputs: f.parameters.map((parameter) =>
      Object.hasOwn(item.inputs, parameter.name) ? item.inputs[parameter.name] : undefined,
    ),
    outputs: f.outputs.map((output) => output.name),
  }
}
