import { generateKeyBetween, generateNKeysBetween } from 'fractional-indexing'
import { type Problem, problem } from '../words/problem'
import { newId } from './create'
import type { Edit, SimpleEdit } from './edit'
import { LIMITS } from './limits'
import { type Cell, cellKey, type Notebook, type Sample, type Scenario } from './notebook'
import { baselineOf, inOrder } from './order'
import { own } from './own'
import { BASELINE, nameKey } from './scenarioName'
import { together } from './together'

/** The wanted name, with the first number after it that makes it free: "Drain a third 2". */
export function freeName(notebook: Notebook, wanted: string): string {
  return freeOf(new Set(Object.values(notebook.scenarios).map((scenario) => nameKey(scenario.name))), wanted)
}

/** A new scenario that follows the baseline in everything, right of `after`, else last. */
export function addScenario(notebook: Notebook, name: string, after?: string): Edit {
  return { type: 'add_scenario', scenario: scenarioAfter(notebook, name, after), cells: {} }
}

/**
 * A scenario with the same values, right of the first. A copy of the baseline has nothing of its own and follows it;
 * a copy of another has the same entries and the same sample.
 */
export function duplicateScenario(notebook: Notebook, id: string, name: string): Edit | Problem {
  const original = own(notebook.scenarios, id)
  if (original === undefined) return problem('scenario_gone')
  const scenario = scenarioAfter(notebook, name, id)
  if (id === baselineOf(notebook).id) return { type: 'add_scenario', scenario, cells: {} }
  const { note, sample, cases, foretold } = original
  const copied = { ...scenario, note, sample, ...(cases ? { cases } : {}), ...(foretold ? { foretold } : {}) }
  return { type: 'add_scenario', scenario: copied, cells: cellsOf(notebook, id) }
}

/** Samples with a scenario tied to each, in the order given, right of all others; one step of history. */
export function addSamples(notebook: Notebook, samples: readonly Sample[]): Edit {
  const taken = new Set(Object.values(notebook.scenarios).map((scenario) => nameKey(scenario.name)))
  const orders = generateNKeysBetween(inOrder(notebook).at(-1)?.order ?? null, null, samples.length)
  const edits = samples.flatMap((sample, at): readonly SimpleEdit[] => {
    const name = freeOf(taken, sample.name)
    taken.add(nameKey(name))
    const scenario = { id: newId(), name, note: '', order: orders[at] ?? '', sample: sample.id }
    return [
      { type: 'put_sample', sample },
      { type: 'add_scenario', scenario, cells: {} },
    ]
  })
  return { type: 'together', edits }
}

/** One place to the left (-1) or to the right (1); the baseline neither moves nor is passed. */
export function moveScenario(notebook: Notebook, id: string, by: -1 | 1): Edit | Problem {
  const scenarios = inOrder(notebook)
  const at = scenarios.findIndex((scenario) => scenario.id === id)
  const scenario = scenarios[at]
  if (scenario === undefined) return problem('scenario_gone')
  if (at === 0) return problem('baseline_stays', [], { name: scenario.name })
  const passed = scenarios[at + by]
  if (passed === undefined) return problem('scenario_is_last', [], { name: scenario.name })
  if (at + by === 0) return problem('before_baseline', [], { name: scenario.name, baseline: passed.name })
  return placeScenario(notebook, id, at + by)
}

/** To this place among all scenarios; the first is the baseline's, which neither moves nor is passed. */
export function placeScenario(notebook: Notebook, id: string, place: number): Edit | Problem {
  const baseline = baselineOf(notebook)
  const scenario = own(notebook.scenarios, id)
  if (scenario === undefined) return problem('scenario_gone')
  if (id === baseline.id) return problem('baseline_stays', [], { name: scenario.name })
  if (place < 1) return problem('before_baseline', [], { name: scenario.name, baseline: baseline.name })
  const others = inOrder(notebook).filter((other) => other.id !== id)
  const order = generateKeyBetween(
    others[place - 1]?.order ?? others.at(-1)?.order ?? null,
    others[place]?.order ?? null,
  )
  return { type: 'change_scenario', scenario: id, set: { order } }
}

/** Takes a sample out of the notebook and off the scenarios that are tied to it. */
export function removeSample(notebook: Notebook, sample: string): Edit {
  const tied = inOrder(notebook).filter((scenario) => scenario.sample === sample)
  const untie = tied.map(({ id }): Edit => ({ type: 'change_scenario', scenario: id, set: { sample: null } }))
  return together(...untie, { type: 'remove_sample', sample })
}

/** What was typed in a scenario, by quantity. */
function cellsOf(notebook: Notebook, scenario: string): Readonly<Record<string, Cell>> {
  const prefix = cellKey(scenario, '')
  const theirs = Object.entries(notebook.cells).filter(([key]) => key.startsWith(prefix))
  return Object.fromEntries(theirs.map(([key, cell]) => [key.slice(prefix.length), cell]))
}

/** A scenario with nothing in it yet, under a free name, right of `after`, else last. */
export function scenarioAfter(notebook: Notebook, name: string, after: string | undefined): Scenario {
  const scenarios = inOrder(notebook)
  const found = scenarios.findIndex((scenario) => scenario.id === after)
  const left = found < 0 ? scenarios.length - 1 : found
  const order = generateKeyBetween(scenarios[left]?.order ?? null, scenarios[left + 1]?.order ?? null)
  return { id: newId(), name: freeName(notebook, name), note: '', order, sample: null }
}

function freeOf(taken: ReadonlySet<string>, wanted: string): string {
  const name = wanted.trim()
  for (let number = 1; ; number++) {
    const ending = number === 1 ? '' : ` ${number}`
    const candidate = name.slice(0, LIMITS.name - ending.length) + ending
    if (nameKey(candidate) !== BASELINE && !taken.has(nameKey(candidate))) return candidate
  }
}
