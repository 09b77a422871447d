import { hasValue } from '../../engine/outcome'
import { quoted } from '../../intake/contractCsv'
import { isForetold } from '../../notebook/foretold'
import { exactIn } from '../../units/exactIn'
import type { OutlineQuantity } from '../../worksheet/catalog'
import type { Definition } from '../../worksheet/definition'
import { groupsOf } from '../grid/gridRow'
import { unitWords } from '../unitWords'
import type { View } from './view'

/**
 * Worksheets as CSV (RFC 4180 but for LF): a line for each scenario, a column for each quantity, once. The header has the
 * contract names with the unit in brackets, so that the commands and the lab page read the file again. Figures have all
 * their digits; choices stand by id; the limit of a test stands as one (`<0.2`); what is not available is empty. A name that a spreadsheet would run as a formula goes
 * behind an apostrophe. The last column names what is typed over the notebook's own answers, and the readings of a water that
 * is foretold: a figure alone cannot tell.
 */
export function worksheetCsv(view: View, definitions: readonly Definition[], scenarios: readonly string[]): string {
  const quantities = new Map<string, OutlineQuantity>()
  for (const definition of definitions)
    for (const { rows } of groupsOf(definition, view.catalog()))
      for (const { quantity } of rows) quantities.set(quantity.name, quantity)
  const columns = [...quantities.values()]
  const lines = [
    ['sample', 'date', ...columns.map(({ name }) => heading(name, view.unit(name))), ASSUMED],
    ...scenarios.map((scenario) => {
      const { scenarios: all, samples } = view.notebook()
      const sample = samples[all[scenario]?.sample ?? '']
      return [
        quoted(all[scenario]?.name ?? ''),
        sample?.date ?? '',
        ...columns.map((one) => written(view, scenario, one)),
        columns
          .filter((one) => isAssumed(view, scenario, one))
          .map(({ name }) => name)
          .join(' '),
      ]
    }),
  ]
  return lines.map((line) => `${line.join(',')}\n`).join('')

  function heading(name: string, unit: string): string {
    return quoted(unitWords(unit) === '' ? name : `${name} [${unit}]`)
  }
}

/** Typed over the notebook's own answer, or a reading of a water that nobody has tested. */
function isAssumed(view: View, scenario: string, { name, row, worksheet }: OutlineQuantity): boolean {
  if ('formula' in row) return view.source(scenario, name).cell !== null
  const foretold = worksheet === 'sample' && isForetold(view.notebook().scenarios[scenario])
  return foretold && hasValue(view.outcome(scenario, name))
}

/** Of no quantity: who reads the file again keeps it as a note. */
const ASSUMED = 'assumed'

function written(view: View, scenario: string, { name, row }: OutlineQuantity): string {
  const outcome = view.outcome(scenario, name)
  const { cell } = view.source(scenario, name)
  if (cell?.kind === 'limit')
    return `${cell.side === 'above' ? '>' : '<'}${exactIn(cell.canonical, row.unit, view.unit(name)) ?? cell.canonical}`
  if (!hasValue(outcome)) return ''
  const { value } = outcome
  if (typeof value !== 'number') return quoted(String(value))
  return String(exactIn(value, row.unit, view.unit(name)) ?? value)
}
