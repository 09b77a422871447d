import { lockedFunction } from '../../functions/registry'
import { assumptionsOf } from '../../notebook/assumptions'
import { say } from '../../words/say'
import type { Definition } from '../../worksheet/definition'
import { groupsOf } from '../grid/gridRow'
import { worksheetLabel } from '../grid/worksheetLabel'
import { labelOf } from '../labelOf'
import { shownValue } from '../shownValue'
import type { View } from './view'

type Line = readonly string[]

/** Where the numbers come from, in lines: assumptions, samples with their methods, functions and worksheets with versions. */
export function sourcesOf(
  view: View,
  definitions: readonly Definition[],
  scenarios: readonly string[],
): readonly Line[] {
  const notebook = view.notebook()
  return [
    [[notebook.name, notebook.place].filter((part) => part !== '').join(', ')],
    ...section(say('out.sources.assumptions'), assumptionLines(view, scenarios)),
    ...section(say('out.sources.samples'), sampleLines(view, scenarios)),
    ...section(say('out.sources.functions'), functionLines(view, definitions)),
    ...section(
      say('out.sources.worksheets'),
      definitions.map((one) => [worksheetLabel(one), say('out.sources.edition', { edition: one.edition })]),
    ),
  ]
}

function section(heading: string, lines: readonly Line[]): readonly Line[] {
  return lines.length === 0 ? [] : [[heading], ...lines]
}

/** One of the baseline speaks for the scenarios that follow it, so it is told whichever of them are written. */
function assumptionLines(view: View, scenarios: readonly string[]): readonly Line[] {
  return assumptionsOf(view.notebook(), view.catalog())
    .filter(({ scenario }) => scenario === view.baseline() || scenarios.includes(scenario))
    .map(({ scenario, quantity }) => [
      labelOf(quantity, view.catalog().quantities.get(quantity)?.row),
      view.notebook().scenarios[scenario]?.name ?? '',
      shownValue(view, scenario, quantity),
      say('out.sources.assumed'),
    ])
}

function sampleLines(view: View, scenarios: readonly string[]): readonly Line[] {
  const { samples, scenarios: all } = view.notebook()
  const ids = new Set(scenarios.map((id) => all[id]?.sample ?? ''))
  return [...ids].flatMap((id) => {
    const sample = samples[id]
    if (!sample) return []
    const { origin } = sample
    const methods = Object.entries(sample.readings).flatMap(([quantity, reading]): readonly Line[] =>
      reading.kind === 'value' && reading.method !== undefined
        ? [['', labelOf(quantity, view.catalog().quantities.get(quantity)?.row), reading.entered, reading.method]]
        : [],
    )
    return [
      [
        sample.name,
        sample.date,
        origin ? say('out.sources.file', { file: origin.file, row: origin.row }) : say('out.sources.entered'),
        sample.elsewhere ? say('out.sources.elsewhere') : '',
      ],
      ...methods,
    ]
  })
}

function functionLines(view: View, definitions: readonly Definition[]): readonly Line[] {
  const shown = definitions.flatMap((one) => groupsOf(one, view.catalog()).flatMap(({ rows }) => rows))
  const called = new Set(shown.flatMap(({ quantity }) => quantity.calls))
  return [...called].sort().flatMap((name) => {
    const f = lockedFunction(name)
    return f ? [[name, say('out.sources.version', { version: f.version }), f.source]] : []
  })
}
