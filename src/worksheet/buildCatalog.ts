import { isSolve, type LockedFunction } from '../functions/define'
import { type Problem, problem } from '../words/problem'
import { callsOf } from './callsOf'
import type { Catalog, Quantity, SolveBlock } from './catalog'
import { chartProblems } from './chartProblems'
import type { Row, SolveDefinition } from './definition'
import { dependencyOrder, LONGEST_CHAIN } from './dependencyOrder'
import type { Scope } from './formulaProblems'
import { disagreement, measureOf } from './measure'
import { type Path, type Placed, place } from './place'
import { readsOf } from './readsOf'
import { refusalsOf, rowFormulas } from './rowFormulas'
import { rowProblems } from './rowProblems'
import { solveBlock } from './solveBlock'
import type { Source } from './source'
import { targetProblems, withTargets } from './withTargets'

/**
 * All definitions as one graph. Names are shared by all worksheets, so the catalog is made anew when one comes or goes.
 * @returns the catalog, or everything that is wrong, each with file, path inside it and reason
 */
export function buildCatalog(
  sources: readonly Source[],
  registry: readonly LockedFunction[],
): Catalog | readonly Problem[] {
  const functions = new Map(registry.map((f) => [f.name, f]))
  const places = place(sources, functions)
  const problems: Problem[] = [...places.problems]
  const known = knownNames(places, functions)
  const visible = new Map(sources.map((source) => [source, source.takesAll ? known : visibleIn(source, functions)]))
  const rowProblem = (source: Source) => (name: string, path: Path) => {
    if (!places.rows.has(name)) return problem('row_not_known', path, { name })
    return visible.get(source)?.has(name) ? null : problem('row_not_taken', path, { name })
  }

  const solves = new Map<string, SolveBlock>()
  const unsettled = new Set<string>()
  for (const [id, placed] of places.solves) {
    const block = solveBlock(placed, functions, rowProblem(placed.source))
    if ('id' in block) {
      solves.set(id, block)
      problems.push(...inputUnitProblems(block, placed, places, functions))
    } else {
      problems.push(...block)
      unsettled.add(id)
    }
  }
  const scope = (source: Source): Scope => ({
    visible: visible.get(source) ?? new Set(),
    known,
    functions,
    shipped: source.shipped,
    unsettled,
  })
  for (const source of sources) problems.push(...layoutProblems(source, scope(source), rowProblem(source)))

  const sets = sources.flatMap(({ definition }) => definition.targets ?? [])
  const rowOf = (name: string) => {
    const row = places.rows.get(name)?.item
    return row && withTargets(row, sets)
  }
  problems.push(...targetProblems(sources, rowOf))
  for (const source of sources) problems.push(...chartProblems(source, rowOf))
  const ofWorksheet = new Map(
    sources.map((source) => [source, refusalsOf(source.definition.refuses, [source.file], scope(source), problems)]),
  )

  const quantities = new Map<string, Quantity>()
  for (const [name, { item: row, source, path }] of places.rows) {
    problems.push(...rowProblems(row, path, rowOf))
    const { formula, checks, refusals } = rowFormulas(row, path, scope(source), ofWorksheet.get(source) ?? [], problems)
    const reads = formula ? readsOf(formula.tree, solves) : []
    problems.push(...standInProblems(row, reads, path))
    quantities.set(name, {
      name,
      row: withTargets(row, sets),
      worksheet: source.definition.id,
      index: quantities.size,
      formula,
      checks,
      refusals,
      reads: [...new Set([...reads, ...refusals.flatMap(({ when }) => readsOf(when.tree, solves))])],
      readBy: [],
      calls: formula ? callsOf(formula.tree, solves, functions) : [],
    })
  }

  const { order, circles, tooLong } = dependencyOrder(new Map([...quantities].map(([name, q]) => [name, q.reads])))
  for (const circle of circles) {
    const [first = ''] = circle
    const path = places.rows.get(first)?.path ?? []
    problems.push(problem('formula_circle', [...path, 'formula'], { circle: [...circle, first].join(' → ') }))
  }
  for (const name of tooLong.slice(0, 1)) {
    problems.push(
      problem('formula_chain', [...(places.rows.get(name)?.path ?? []), 'formula'], { name, most: LONGEST_CHAIN }),
    )
  }
  if (problems.length > 0) return problems
  return {
    worksheets: sources.map((s) => s.definition).filter(({ groups }) => groups.length > 0),
    quantities: withReaders(quantities),
    solves,
    order,
    functions,
  }
}

/** A solve of the reader's own that is fed in another unit than its function takes would answer for another water. */
function inputUnitProblems(
  { inputs, function: name }: SolveBlock,
  { source, path }: Placed<SolveDefinition>,
  { rows }: ReturnType<typeof place>,
  functions: ReadonlyMap<string, LockedFunction>,
): Problem[] {
  // A test holds the shipped ones to it.
  if (source.shipped) return []
  return (functions.get(name)?.parameters ?? []).flatMap(({ name: parameter, unit, ofAnyBasis }, i) => {
    const given = rows.get(inputs[i] ?? '')?.item.unit
    if (given === undefined || ofAnyBasis || !disagreement(measureOf(given), measureOf(unit))) return []
    const facts = { function: name, parameter, found_unit: given, wanted_unit: unit }
    return [problem('solve_input_unit', [...path, 'inputs', parameter], facts)]
  })
}

export function isCatalog(x: Catalog | readonly Problem[]): x is Catalog {
  return !Array.isArray(x)
}

/** All quantities, and all outputs of solves as `water.lsi`. */
function knownNames(places: ReturnType<typeof place>, functions: ReadonlyMap<string, LockedFunction>): Set<string> {
  const known = new Set(places.rows.keys())
  for (const { item } of places.solves.values()) for (const name of outputsOf(item, functions)) known.add(name)
  return known
}

function outputsOf(
  { id, function: name }: { readonly id: string; readonly function: string },
  functions: ReadonlyMap<string, LockedFunction>,
): string[] {
  const f = functions.get(name)
  return f && isSolve(f) ? f.outputs.map((output) => `${id}.${output.name}`) : []
}

/** What a worksheet has itself, and what it takes. */
function visibleIn({ definition }: Source, functions: ReadonlyMap<string, LockedFunction>): Set<string> {
  const { takes, solves, groups } = definition
  const visible = new Set(takes)
  for (const solve of solves ?? []) for (const name of outputsOf(solve, functions)) visible.add(name)
  for (const { rows } of groups) for (const row of rows) if (typeof row !== 'string') visible.add(row.name)
  return visible
}

/** Names in `takes` and in the groups that nothing gives. */
function layoutProblems(
  { definition, file }: Source,
  { known, unsettled }: Scope,
  rowProblem: (name: string, path: Path) => Problem | null,
): Problem[] {
  const problems: Problem[] = []
  definition.takes.forEach((name, i) => {
    const [solve = ''] = name.split('.')
    if (!known.has(name) && !unsettled?.has(solve))
      problems.push(problem('takes_nothing', [file, 'takes', i], { name }))
  })
  definition.groups.forEach(({ rows }, g) => {
    rows.forEach((row, r) => {
      const wrong = typeof row === 'string' ? rowProblem(row, [file, 'groups', g, 'rows', r]) : null
      if (wrong) problems.push(wrong)
    })
  })
  return problems
}

function standInProblems(row: Row, reads: readonly string[], path: Path): Problem[] {
  const standIn = 'when_missing' in row ? row.when_missing : undefined
  if (!standIn || reads.includes(standIn.of)) return []
  return [problem('stand_in_not_read', [...path, 'when_missing', 'of'], { name: standIn.of })]
}

function withReaders(quantities: ReadonlyMap<string, Quantity>): ReadonlyMap<string, Quantity> {
  const readers = new Map<string, string[]>()
  for (const { name, reads } of quantities.values()) {
    for (const read of reads) readers.set(read, [...(readers.get(read) ?? []), name])
  }
  return new Map([...quantities].map(([name, q]) => [name, { ...q, readBy: readers.get(name) ?? [] }]))
}
