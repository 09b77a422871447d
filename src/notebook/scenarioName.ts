import { type Problem, problem } from '../words/problem'
import { LIMITS } from './limits'
import type { Notebook, Scenario } from './notebook'

/** The word by which formulas name the first scenario, whatever it is called. */
export const BASELINE = 'baseline'

/** Two names are the same name when these are equal: case and spaces do not tell scenarios apart. */
export function nameKey(name: string): string {
  return name.normalize('NFC').trim().replace(/\s+/g, ' ').toLowerCase()
}

/** Why a name is no name, whoever bears it: empty, too long, or with line breaks and other control characters. */
export function nameFault(name: string): Problem | null {
  if (name.trim() === '') return problem('name_empty')
  if (name.length > LIMITS.name) return problem('name_too_long', [], { length: name.length, most: LIMITS.name })
  if (/\p{Cc}/u.test(name)) return problem('name_unwritable', [], { name })
  return null
}

/** Why a scenario cannot bear this name in this notebook; `self` is the scenario itself when it is renamed. */
export function scenarioNameFault(notebook: Notebook, name: string, self: string | null): Problem | null {
  const fault = nameFault(name)
  if (fault !== null) return fault
  const key = nameKey(name)
  if (key === BASELINE) return problem('scenario_name_reserved', [], { name })
  const other = scenarioNamed(notebook, name)
  return other !== undefined && other.id !== self ? problem('scenario_name_taken', [], { name: other.name }) : null
}

export function scenarioNamed(notebook: Notebook, name: string): Scenario | undefined {
  const key = nameKey(name)
  return Object.values(notebook.scenarios).find((scenario) => keyOf(scenario) === key)
}

const keys = new WeakMap<Scenario, string>()

function keyOf(scenario: Scenario): string {
  const key = keys.get(scenario) ?? nameKey(scenario.name)
  keys.set(scenario, key)
  return key
}
