import { hasValue } from '../../engine/outcome'
import { lockedFunction } from '../../functions/registry'
import { isForetold } from '../../notebook/foretold'
import { readsOthers } from '../../notebook/planLink'
import type { Sheet, SheetCell, SheetRow } from '../../out/sheet'
import { exactIn } from '../../units/exactIn'
import { hasWords, say } from '../../words/say'
import type { OutlineQuantity } from '../../worksheet/catalog'
import type { Definition } from '../../worksheet/definition'
import { cellView } from '../grid/cellView'
import { groupsOf } from '../grid/gridRow'
import { worksheetLabel } from '../grid/worksheetLabel'
import { labelOf } from '../labelOf'
import { sourceText } from '../margin/sourceText'
import { unitWords } from '../unitWords'
import type { View } from './view'

/** A worksheet with the values of some scenarios, as it goes out of the notebook. */
export function sheetOf(view: View, definition: Definition, scenarios: readonly string[]): Sheet {
  const notebook = view.notebook()
  return {
    title: worksheetLabel(definition),
    scenarios: scenarios.map((id) => ({
      name: notebook.scenarios[id]?.name ?? '',
      sample: sampleText(view, id),
    })),
    groups: groupsOf(definition, view.catalog()).map((group) => {
      const key = `group.${definition.id}.${group.id}`
      return {
        label: group.label ?? (hasWords(key) ? say(key) : group.id.replaceAll('_', ' ')),
        rows: group.rows.map(({ quantity }) => rowOf(view, quantity, scenarios)),
      }
    }),
  }
}

/** The sample that a scenario is tied to, and when it was taken, or that its water is foretold; empty where it is neither. */
export function sampleText(view: View, scenario: string): string {
  const notebook = view.notebook()
  if (isForetold(notebook.scenarios[scenario])) return say('page.foretold')
  const sample = notebook.samples[notebook.scenarios[scenario]?.sample ?? '']
  if (!sample) return ''
  return sample.date === '' ? sample.name : `${sample.name}, ${sample.date}`
}

function rowOf(view: View, quantity: OutlineQuantity, scenarios: readonly string[]): SheetRow {
  const { name, row } = quantity
  const code = view.unit(name)
  const unit = unitWords(code)
  return {
    name,
    label: labelOf(name, row),
    unit,
    unitCode: unit === '' ? null : code,
    formula: 'formula' in row ? row.formula : '',
    functions: quantity.calls.map((called) => `${called} ${lockedFunction(called)?.version ?? ''}`.trim()).join(', '),
    cells: scenarios.map((scenario) => cellOf(view, quantity, scenario)),
  }
}

function cellOf(view: View, { name, row }: OutlineQuantity, scenario: string): SheetCell {
  const outcome = view.outcome(scenario, name)
  const source = view.source(scenario, name)
  const unit = view.unit(name)
  const seen = cellView({ row, outcome, base: undefined, source, unit, band: undefined })
  const shown = seen.figures ? seen.figures.whole + seen.figures.fraction : seen.text
  const entered = source.from === 'baseline' ? null : source.cell
  const note = seen.assumed || (entered && readsOthers(entered)) ? sourceText(view, scenario, name) : ''
  // The limit of a test is no number, and goes out as it is read: `< 0.2`.
  if (source.cell?.kind === 'limit') return { value: shown, shown, decimals: 0, assumed: seen.assumed, note }
  if (!hasValue(outcome)) return { value: null, shown, decimals: 0, assumed: seen.assumed, note }
  const { value } = outcome
  const exact = typeof value === 'number' ? (exactIn(value, row.unit, unit) ?? value) : value
  // The mark itself is one character, whichever the reader's language has.
  const decimals = Math.max(0, (seen.figures?.fraction.length ?? 0) - 1)
  return { value: exact, shown, decimals, assumed: seen.assumed, note }
}
