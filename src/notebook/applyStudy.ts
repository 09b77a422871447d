import { type Problem, problem } from '../words/problem'
import type { SimplyApplied } from './applied'
import type { PutChart, SetPrecision, SimpleEdit } from './edit'
import { LIMITS } from './limits'
import type { Notebook } from './notebook'
import { own, withEntry, withoutEntry } from './own'
import { nameFault } from './scenarioName'

export function putChart(notebook: Notebook, { chart }: PutChart): SimplyApplied | Problem {
  const fault = nameFault(chart.name)
  if (fault !== null) return fault
  const before = own(notebook.charts, chart.id)
  if (before === undefined && Object.keys(notebook.charts).length >= LIMITS.charts)
    return problem('too_many_charts', [], { most: LIMITS.charts })
  const inverse: SimpleEdit =
    before === undefined ? { type: 'remove_chart', chart: chart.id } : { type: 'put_chart', chart: before }
  return { notebook: { ...notebook, charts: withEntry(notebook.charts, chart.id, chart) }, inverse, history: 'step' }
}

export function removeChart(notebook: Notebook, id: string): SimplyApplied | Problem {
  const before = own(notebook.charts, id)
  if (before === undefined) return problem('chart_gone')
  const charts = withoutEntry(notebook.charts, id)
  return { notebook: { ...notebook, charts }, inverse: { type: 'put_chart', chart: before }, history: 'step' }
}

export function setPrecision(notebook: Notebook, { quantity, precision }: SetPrecision): SimplyApplied | Problem {
  const before = own(notebook.precisions, quantity) ?? null
  const inverse: SimpleEdit = { type: 'set_precision', quantity, precision: before }
  if (before === null && precision === null) return { notebook, inverse, history: 'none' }
  if (before === null && Object.keys(notebook.precisions).length >= LIMITS.entries)
    return problem('too_many_precisions', [], { most: LIMITS.entries })
  const precisions =
    precision === null
      ? withoutEntry(notebook.precisions, quantity)
      : withEntry(notebook.precisions, quantity, precision)
  return { notebook: { ...notebook, precisions }, inverse, history: 'step' }
}
