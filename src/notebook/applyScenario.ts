import { type Problem, problem } from '../words/problem'
import type { SimplyApplied } from './applied'
import type { AddScenario, ChangeScenario, RemoveScenario, SimpleEdit } from './edit'
import { held } from './held'
import { LIMITS } from './limits'
import { type Cell, cellKey, type Notebook, type Scenario } from './notebook'
import { baselineOf, isOrderKey } from './order'
import { own, withEntry, withoutEntry } from './own'
import { isFollowed, planFault } from './planLink'
import { scenarioNameFault } from './scenarioName'

/** A scenario with its typed cells; it stands after the baseline. */
export function addScenario(notebook: Notebook, { scenario, cells }: AddScenario): SimplyApplied | Problem {
  if (own(notebook.scenarios, scenario.id) !== undefined) return problem('scenario_exists', [], { name: scenario.name })
  if (Object.keys(notebook.scenarios).length >= LIMITS.scenarios)
    return problem('too_many_scenarios', [], { most: LIMITS.scenarios })
  const fault =
    scenarioNameFault(notebook, scenario.name, null) ??
    noteFault(scenario.note) ??
    sampleFault(notebook, scenario.sample) ??
    orderFault(notebook, scenario.order, scenario.name) ??
    roomFault(notebook, cells) ??
    Object.values(cells).reduce<Problem | null>((found, cell) => found ?? planFault(notebook, scenario.id, cell), null)
  if (fault !== null) return fault
  const added = Object.entries(cells).map(([quantity, cell]) => [cellKey(scenario.id, quantity), cell] as const)
  return {
    notebook: {
      ...notebook,
      scenarios: withEntry(notebook.scenarios, scenario.id, scenario),
      cells: added.length === 0 ? notebook.cells : { ...notebook.cells, ...Object.fromEntries(added) },
    },
    inverse: { type: 'remove_scenario', scenario: scenario.id },
    history: 'step',
  }
}

/** With the scenario go its typed cells; its sample stays in the notebook. */
export function removeScenario(notebook: Notebook, edit: RemoveScenario): SimplyApplied | Problem {
  const scenario = own(notebook.scenarios, edit.scenario)
  if (scenario === undefined) return problem('scenario_gone')
  if (scenario === baselineOf(notebook)) return problem('baseline_stays', [], { name: scenario.name })
  if (isFollowed(notebook, edit.scenario)) return problem('scenario_followed', [], { name: scenario.name })
  const cells: Record<string, Cell> = {}
  const kept: [string, Cell][] = []
  const prefix = cellKey(edit.scenario, '')
  for (const entry of Object.entries(notebook.cells)) {
    if (entry[0].startsWith(prefix)) cells[entry[0].slice(prefix.length)] = entry[1]
    else kept.push(entry)
  }
  const scenarios = withoutEntry(notebook.scenarios, edit.scenario)
  const typed = Object.keys(cells).length > 0
  return {
    notebook: { ...notebook, scenarios, cells: typed ? Object.fromEntries(kept) : notebook.cells },
    inverse: { type: 'add_scenario', scenario, cells },
    history: 'step',
  }
}

export function changeScenario(notebook: Notebook, { scenario: id, set }: ChangeScenario): SimplyApplied | Problem {
  const scenario = own(notebook.scenarios, id)
  if (scenario === undefined) return problem('scenario_gone')
  const fault =
    (set.name === undefined ? null : scenarioNameFault(notebook, set.name, id)) ??
    (set.note === undefined ? null : noteFault(set.note)) ??
    (set.sample === undefined ? null : sampleFault(notebook, set.sample)) ??
    (set.order === undefined || set.order === scenario.order ? null : moveFault(notebook, id, set.order))
  if (fault !== null) return fault
  const before = { ...held(scenario, set), ...(set.cases === undefined ? {} : { cases: scenario.cases ?? [] }) }
  const inverse: SimpleEdit = { type: 'change_scenario', scenario: id, set: before }
  const scenarios = withEntry(notebook.scenarios, id, chosen({ ...scenario, ...set }))
  const onlyNote = Object.keys(set).every((key) => key === 'note')
  return { notebook: { ...notebook, scenarios }, inverse, history: onlyNote ? 'join' : 'step' }
}

/** A scenario for which no case was chosen says nothing of cases. */
function chosen({ cases, ...scenario }: Scenario): Scenario {
  return cases === undefined || cases.length === 0 ? scenario : { ...scenario, cases }
}

function noteFault(note: string): Problem | null {
  return note.length > LIMITS.note ? problem('note_too_long', [], { length: note.length, most: LIMITS.note }) : null
}

function sampleFault(notebook: Notebook, sample: string | null): Problem | null {
  return sample === null || own(notebook.samples, sample) !== undefined ? null : problem('sample_gone')
}

/** The baseline may take no other place, and no other scenario its place. */
function moveFault(notebook: Notebook, id: string, order: string): Problem | null {
  const baseline = baselineOf(notebook)
  const name = own(notebook.scenarios, id)?.name ?? ''
  return baseline.id === id ? problem('baseline_stays', [], { name }) : orderFault(notebook, order, name)
}

function orderFault(notebook: Notebook, order: string, name: string): Problem | null {
  const baseline = baselineOf(notebook)
  if (order.length > LIMITS.order || !isOrderKey(order)) return problem('order_unreadable', [], { name })
  if (order < baseline.order) return problem('before_baseline', [], { name, baseline: baseline.name })
  const holder = Object.values(notebook.scenarios).find((scenario) => scenario.order === order)
  return holder === undefined ? null : problem('order_taken', [], { name, other: holder.name })
}

function roomFault(notebook: Notebook, cells: Readonly<Record<string, Cell>>): Problem | null {
  const count = Object.keys(notebook.cells).length + Object.keys(cells).length
  return count > LIMITS.cells ? problem('too_many_cells', [], { most: LIMITS.cells }) : null
}
