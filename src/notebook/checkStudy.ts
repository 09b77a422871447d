import { type Problem, problem } from '../words/problem'
import type { Outline } from '../worksheet/catalog'
import { checkUnit } from './checkCell'
import type { Chart, Precision } from './notebook'

type Quantities = Pick<Outline, 'quantities'>

/** Why a chart cannot be drawn with these worksheets: a quantity that none has, an input that is not a number, an empty span. */
export function checkChart(catalog: Quantities, chart: Chart): Problem | null {
  const unknown = chart.outputs.find((name) => !catalog.quantities.has(name))
  if (unknown !== undefined) return problem('quantity_unknown', [], { quantity: unknown })
  if (chart.kind === 'comparison') return null
  const row = catalog.quantities.get(chart.input)?.row
  if (row === undefined) return problem('quantity_unknown', [], { quantity: chart.input })
  if (!('input' in row) || row.input !== 'number') return problem('not_an_input', [], { quantity: chart.input })
  return chart.from < chart.to ? null : problem('span_empty', [], { quantity: chart.input })
}

/** Why readings of this quantity cannot be as exact as that; null when they can. */
export function checkPrecision(catalog: Quantities, name: string, precision: Precision): Problem | null {
  if (precision.kind === 'value') return checkUnit(catalog, name, precision.unit)
  return catalog.quantities.has(name) ? null : problem('quantity_unknown', [], { quantity: name })
}
