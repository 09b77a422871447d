import type { LockedFunction } from '../functions/define'
import { type Problem, problem } from '../words/problem'
import type { Row, SolveDefinition } from './definition'
import { GENERAL_FUNCTIONS } from './generalFunctions'
import type { Source } from './source'

export type Path = Problem['path']

export interface Placed<T> {
  readonly item: T
  readonly source: Source
  readonly path: Path
}

export interface Places {
  readonly rows: ReadonlyMap<string, Placed<Row>>
  readonly solves: ReadonlyMap<string, Placed<SolveDefinition>>
  readonly problems: readonly Problem[]
}

/** Words with a meaning of their own in formulas. */
const RESERVED = new Set(['true', 'false', 'baseline'])

/** Finds where every row and solve stands, and refuses a name that has a meaning already. The first one keeps it. */
export function place(sources: readonly Source[], functions: ReadonlyMap<string, LockedFunction>): Places {
  const rows = new Map<string, Placed<Row>>()
  const solves = new Map<string, Placed<SolveDefinition>>()
  const worksheets = new Map<string, Source>()
  const problems: Problem[] = []

  const claim = (name: string, source: Source, path: Path): boolean => {
    const first = rows.get(name) ?? solves.get(name)
    const meaning = meaningOf(name, source, functions)
    if (first) problems.push(taken('name', name, first.source, source, path))
    else if (meaning) problems.push(problem(meaning, path, { name }))
    return first === undefined
  }

  for (const source of sources) {
    const { definition, file } = source
    const first = worksheets.get(definition.id)
    if (first) problems.push(taken('worksheet', definition.id, first, source, [file, 'id']))
    else worksheets.set(definition.id, source)
    definition.solves?.forEach((item, i) => {
      const path = [file, 'solves', i]
      if (claim(item.id, source, [...path, 'id'])) solves.set(item.id, { item, source, path })
    })
    definition.groups.forEach((group, g) => {
      group.rows.forEach((item, r) => {
        if (typeof item === 'string') return
        const path = [file, 'groups', g, 'rows', r]
        if (claim(item.name, source, [...path, 'name'])) rows.set(item.name, { item, source, path })
      })
    })
  }
  return { rows, solves, problems }
}

function taken(what: 'name' | 'worksheet', name: string, first: Source, second: Source, path: Path): Problem {
  const how = first.shipped && !second.shipped ? 'shadows_shipped' : 'twice'
  return problem(`${what}_${how}`, path, { name, other: first.file })
}

/** Why a name cannot be a quantity's: it means something in formulas already; null where it does not. */
export function meaningOf(
  name: string,
  source: Pick<Source, 'shipped'>,
  functions: ReadonlyMap<string, LockedFunction>,
): 'name_reserved' | 'name_is_function' | null {
  if (RESERVED.has(name)) return 'name_reserved'
  return isFunctionName(name, source, functions) ? 'name_is_function' : null
}

/**
 * A row may not be called like a general function. A shipped row may be called like the locked function that it shows
 * (`ph_saturation`), since a call is told by its parenthesis; a reader's own may not, lest it be taken for it.
 */
function isFunctionName(
  name: string,
  source: Pick<Source, 'shipped'>,
  functions: ReadonlyMap<string, LockedFunction>,
): boolean {
  const upper = name.toUpperCase()
  return GENERAL_FUNCTIONS.has(upper) || (!source.shipped && functions.has(upper))
}
