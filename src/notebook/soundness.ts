import { type Problem, problem } from '../words/problem'
import type { Notebook } from './notebook'
import { inOrder, isOrderKey } from './order'
import { planFault } from './planLink'
import { BASELINE, nameFault, nameKey } from './scenarioName'

/**
 * Whether the parts of a notebook fit together as `apply` keeps them: each thing under its own id, scenarios in an
 * order and with names that differ, samples and scenarios that are spoken of are there.
 */
export function unsound(notebook: Notebook, path: Problem['path']): Problem[] {
  return [
    ...underTheirIds(notebook, path),
    ...orderAndNames(notebook, path),
    ...rowNames(notebook, path),
    ...Object.values(notebook.scenarios)
      .filter(({ sample }) => sample !== null && !Object.hasOwn(notebook.samples, sample))
      .map(({ id }) => problem('file_no_such_sample', [...path, 'scenarios', id, 'sample'])),
    ...Object.keys(notebook.cells)
      .filter((key) => !Object.hasOwn(notebook.scenarios, key.slice(0, key.indexOf('/'))))
      .map((key) => problem('file_no_such_scenario', [...path, 'cells', key])),
    ...Object.entries(notebook.cells)
      .filter(([key, cell]) => planFault(notebook, key.slice(0, key.indexOf('/')), cell) !== null)
      .map(([key]) => problem('file_no_such_scenario', [...path, 'cells', key, 'plan'])),
  ]
}

function underTheirIds(notebook: Notebook, path: Problem['path']): Problem[] {
  const records = {
    scenarios: notebook.scenarios,
    samples: notebook.samples,
    shelf: notebook.shelf,
    charts: notebook.charts,
    worksheets: notebook.worksheets,
    rows: notebook.rows,
    plans: notebook.plans,
    additions: notebook.additions,
    remarks: notebook.remarks,
    lessons: notebook.lessons,
    cases: notebook.cases,
  }
  return Object.entries(records).flatMap(([record, things]) =>
    Object.entries(things)
      .filter(([id, thing]) => !(typeof thing === 'object' && thing !== null && 'id' in thing && thing.id === id))
      .map(([id]) => problem('file_other_id', [...path, record, id, 'id'], { id })),
  )
}

function rowNames(notebook: Notebook, path: Problem['path']): Problem[] {
  const taken = new Set<string>()
  return Object.values(notebook.rows).flatMap(({ id, order, row: { name } }) => {
    const place = [...path, 'rows', id]
    const faults = isOrderKey(order)
      ? []
      : [problem('file_unreadable', [...place, 'order'], { found: order.slice(0, 40) })]
    if (taken.has(name)) faults.push(problem('file_row_name_taken', [...place, 'row', 'name'], { name }))
    taken.add(name)
    return faults
  })
}

function orderAndNames(notebook: Notebook, path: Problem['path']): Problem[] {
  const scenarios = inOrder(notebook)
  if (scenarios.length === 0) return [problem('file_no_scenario', [...path, 'scenarios'])]
  const faults: Problem[] = []
  const taken = new Set([BASELINE])
  let before = ''
  for (const { id, name, order } of scenarios) {
    const place = [...path, 'scenarios', id]
    if (!isOrderKey(order)) faults.push(problem('file_unreadable', [...place, 'order'], { found: order.slice(0, 40) }))
    else if (order === before) faults.push(problem('file_order_taken', [...place, 'order']))
    const nameless = noName(name, [...place, 'name'])
    if (nameless.length > 0) faults.push(...nameless)
    else if (taken.has(nameKey(name))) faults.push(problem('file_name_taken', [...place, 'name'], { name }))
    taken.add(nameKey(name))
    before = order
  }
  for (const { id, name } of Object.values(notebook.samples))
    faults.push(...noName(name, [...path, 'samples', id, 'name']))
  for (const { id, name } of Object.values(notebook.charts))
    faults.push(...noName(name, [...path, 'charts', id, 'name']))
  return [...faults, ...noName(notebook.name, [...path, 'name'])]
}

function noName(name: string, place: Problem['path']): Problem[] {
  const fault = nameFault(name)
  return fault === null ? [] : [problem(`file_${fault.code}`, place, fault.facts)]
}
