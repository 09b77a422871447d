import type { LockedFunction, Parameter, Value } from '../functions/define'
import { type Problem, problem } from '../words/problem'

/**
 * One argument against its parameter. The engine's own coercion is not used: it reads a blank as 0 and TRUE as 1.
 * Outside `fitted` (but inside `min..max`) `outsideFit` is called and the value stands.
 */
export function checkArgument(
  f: LockedFunction,
  parameter: Parameter,
  value: unknown,
  outsideFit: (parameter: string) => void,
): Value | Problem {
  if (parameter.choices) {
    if (typeof value === 'string' && parameter.choices.includes(value)) return value
    return problem('not_a_choice', [], {
      function: f.name,
      parameter: parameter.name,
      found: shown(value),
      accepted: parameter.choices,
    })
  }
  if (parameter.unit === 'truth') {
    if (typeof value === 'boolean') return value
    return problem('not_a_truth', [], { function: f.name, parameter: parameter.name, found: shown(value) })
  }
  if (typeof value !== 'number' || !Number.isFinite(value)) {
    return problem('argument_not_a_number', [], { function: f.name, parameter: parameter.name, found: shown(value) })
  }
  const { min = Number.NEGATIVE_INFINITY, max = Number.POSITIVE_INFINITY, fitted } = parameter
  if (value < min || value > max) {
    return problem('argument_out_of_range', [], {
      function: f.name,
      parameter: parameter.name,
      found: value,
      min: Number.isFinite(min) ? min : '−∞',
      max: Number.isFinite(max) ? max : '∞',
      // beside the figures, with its blank; pH and plain numbers have none
      unit: BARE.has(parameter.unit) ? '' : ` ${parameter.unit}`,
    })
  }
  if (fitted && (value < fitted[0] || value > fitted[1])) outsideFit(parameter.name)
  return value
}

const BARE: ReadonlySet<string> = new Set(['1', 'pH'])

function shown(value: unknown): string {
  return typeof value === 'symbol' || typeof value === 'object' ? '' : String(value)
}
