import type { Band, Definition, Refusal, Row } from './definition'
import { renamedFormula } from './renamedFormula'

/**
 * A definition with other names for some of its quantities and solves, and everything in it that speaks of them: formulas,
 * checks, refusals, bands, declared defaults, places, charts.
 * @param names old names and new ones; a name that is not there stays
 */
export function renamedDefinition(definition: Definition, names: ReadonlyMap<string, string>): Definition {
  const named = (name: string) => names.get(name) ?? name
  const formula = (text: string) => renamedFormula(text, (name) => names.get(name))
  const refusals = (all: readonly Refusal[]) => all.map(({ problem, when }) => ({ problem, when: formula(when) }))
  const band = (one: Band): Band =>
    one.when
      ? { ...one, when: Object.fromEntries(Object.entries(one.when).map(([name, of]) => [named(name), of])) }
      : one

  function row(one: Row): Row {
    const look = { ...one, name: named(one.name), ...(one.target && { target: one.target.map(band) }) }
    if (!('formula' in look)) return look
    return {
      ...look,
      formula: formula(look.formula),
      ...(look.when_missing && { when_missing: { ...look.when_missing, of: named(look.when_missing.of) } }),
      ...(look.refuses && { refuses: refusals(look.refuses) }),
      ...(look.checks && { checks: look.checks.map(({ notice, when }) => ({ notice, when: formula(when) })) }),
    }
  }

  return {
    ...definition,
    takes: definition.takes.map(named),
    ...(definition.solves && {
      solves: definition.solves.map((solve) => ({
        ...solve,
        id: named(solve.id),
        inputs: Object.fromEntries(Object.entries(solve.inputs).map(([input, name]) => [input, named(name)])),
      })),
    }),
    ...(definition.refuses && { refuses: refusals(definition.refuses) }),
    groups: definition.groups.map((group) => ({
      ...group,
      rows: group.rows.map((one) => (typeof one === 'string' ? named(one) : row(one))),
    })),
    ...(definition.charts && {
      charts: definition.charts.map((chart) => ({
        ...chart,
        input: named(chart.input),
        outputs: chart.outputs.map(named),
      })),
    }),
  }
}
