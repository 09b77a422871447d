import { isProblem } from '../words/problem'
import type { Definition, Row } from './definition'
import { isScenario } from './nameKey'
import { parseFormula } from './parse'
import { visit } from './visit'

type Entry = Definition['groups'][number]['rows'][number]

/** A row under another one of a worksheet of one's own, or at its end; what its formulas use is listed anew. */
export function withNewRow(definition: Definition, under: string, row: Row): Definition {
  const found = definition.groups.findIndex(({ rows }) => rows.some((entry) => nameOf(entry) === under))
  const at = found < 0 ? definition.groups.length - 1 : found
  return inGroups(definition, (rows, group) => {
    if (group !== at) return rows
    const place = rows.findIndex((entry) => nameOf(entry) === under)
    return place < 0 ? [...rows, row] : [...rows.slice(0, place + 1), row, ...rows.slice(place + 1)]
  })
}

/** The row of that name with other content; its name stays. */
export function withChangedRow(definition: Definition, name: string, row: Row): Definition {
  return inGroups(definition, (rows) => rows.map((entry) => (nameOf(entry) === name ? { ...row, name } : entry)))
}

/** With a row of its own goes what its charts drew of it; one that is only shown here is still drawn. */
export function withoutRow(definition: Definition, name: string): Definition {
  const left = inGroups(definition, (rows) => rows.filter((entry) => nameOf(entry) !== name))
  const isOwn = definition.groups.some(({ rows }) => rows.some((row) => typeof row !== 'string' && row.name === name))
  if (!isOwn || !left.charts) return left
  const charts = left.charts
    .filter(({ input }) => input !== name)
    .map((chart) => ({ ...chart, outputs: chart.outputs.filter((output) => output !== name) }))
    .filter(({ outputs }) => outputs.length > 0)
  return { ...left, charts }
}

/** One place up (-1) or down (1), into the next group at the end of its own; the same definition where there is no further. */
export function withMovedRow(definition: Definition, name: string, by: -1 | 1): Definition {
  const from = definition.groups.findIndex(({ rows }) => rows.some((entry) => nameOf(entry) === name))
  const rows = definition.groups[from]?.rows ?? []
  const at = rows.findIndex((entry) => nameOf(entry) === name)
  const moved = rows[at]
  const inside = at + by >= 0 && at + by < rows.length
  if (moved === undefined || (!inside && definition.groups[from + by] === undefined)) return definition
  return inGroups(definition, (entries, group) => {
    const left = entries.filter((entry) => entry !== moved)
    if (inside && group === from) return [...left.slice(0, at + by), moved, ...left.slice(at + by)]
    if (!inside && group === from + by) return by === 1 ? [moved, ...left] : [...left, moved]
    return group === from ? left : entries
  })
}

function inGroups(
  definition: Definition,
  change: (rows: readonly Entry[], group: number) => readonly Entry[],
): Definition {
  const groups = definition.groups.map((group, at) => ({ ...group, rows: [...change(group.rows, at)] }))
  return withTakes({ ...definition, groups })
}

/** `takes` is what its formulas and places use and it does not have itself; kept up so that nobody has to. */
function withTakes(definition: Definition): Definition {
  const own = new Set<string>((definition.solves ?? []).map(({ id }) => id))
  const used = new Set<string>()
  const read = (text: string) => {
    const formula = parseFormula(text)
    if (isProblem(formula)) return
    visit(formula.tree, (node) => {
      if (node.kind === 'name') used.add(node.of === null || isScenario(node) ? node.name : `${node.of}.${node.name}`)
    })
  }
  for (const { when } of definition.refuses ?? []) read(when)
  for (const { inputs } of definition.solves ?? []) for (const name of Object.values(inputs)) used.add(name)
  for (const row of definition.groups.flatMap(({ rows }) => rows)) {
    if (typeof row === 'string') {
      used.add(row)
      continue
    }
    own.add(row.name)
    for (const band of row.target ?? []) for (const name of Object.keys(band.when ?? {})) used.add(name)
    if (!('formula' in row)) continue
    read(row.formula)
    for (const { when } of [...(row.checks ?? []), ...(row.refuses ?? [])]) read(when)
  }
  const takes = [...used].filter((name) => !own.has(name) && !own.has(name.split('.')[0] ?? ''))
  return { ...definition, takes }
}

function nameOf(entry: Entry): string {
  return typeof entry === 'string' ? entry : entry.name
}
