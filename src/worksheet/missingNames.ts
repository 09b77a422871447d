import type { Catalog } from './catalog'
import type { NameNode } from './compile'
import type { Expression } from './formula'
import { isScenario, nameKey } from './nameKey'
import { readsOf } from './readsOf'

/** How a quantity stands in one scenario. */
export type Standing =
  | 'value'
  /** there is a problem, but not that something is missing */
  | 'refused'
  /**
   * Something is missing: `waits` is the name that the problem itself carries ('' when it carries none), `tree` the
   * formula that was entered in place of the row's own.
   */
  | { readonly waits: string; readonly tree?: Expression }

/**
 * Every reading that a quantity waits for in one scenario, in the order in which its formula comes upon them. Where
 * DEFAULT could use any of several, they are alternatives joined by `|`; an alternative that itself waits for several
 * is represented by the first of them. Quantities that have a value are not walked through.
 */
export function missingNames(
  catalog: Pick<Catalog, 'quantities' | 'solves' | 'functions'>,
  quantity: string,
  standing: (quantity: string) => Standing,
): readonly string[] {
  const found = new Map<string, readonly string[]>()
  const states = new Map<string, Standing>()
  const stateOf = (name: string): Standing => {
    const known = states.get(name) ?? standing(name)
    states.set(name, known)
    return known
  }
  const readBy = (name: string): readonly string[] => {
    const state = stateOf(name)
    const row = catalog.quantities.get(name)
    if (typeof state === 'string' || !row) return []
    const reads = state.tree ? readsOf(state.tree, catalog.solves) : row.reads
    return catalog.quantities.has(state.waits) ? [...reads, state.waits] : reads
  }

  /** Each after all that it reads, with a list instead of recursion: a chain of formulas can be long. */
  const search = (top: string) => {
    const open = [top]
    const begun = new Set<string>()
    for (let name = open.at(-1); name !== undefined; name = open.at(-1)) {
      const reads = begun.has(name) ? [] : readBy(name).filter((other) => other !== name && !begun.has(other))
      begun.add(name)
      if (reads.length > 0) open.push(...reads)
      else {
        if (!found.has(name)) found.set(name, searched(name))
        open.pop()
      }
    }
  }
  const ofQuantity = (name: string): readonly string[] => found.get(name) ?? []
  const searched = (name: string): readonly string[] => {
    const state = stateOf(name)
    if (typeof state === 'string') return []
    const tree = state.tree ?? catalog.quantities.get(name)?.formula?.tree
    if (!tree) return [name]
    const names = ofTree(tree)
    if (names.length > 0 || state.waits === '') return names
    // A function that mostly does without a reading may ask for it here, as a round pool for its diameter.
    const asked = ofQuantity(state.waits)
    return asked.length > 0 ? asked : [state.waits]
  }

  const ofTree = (e: Expression): readonly string[] => {
    switch (e.kind) {
      case 'name':
        return ofName(e)
      case 'unary':
        return ofTree(e.operand)
      case 'binary':
        return together(operands(e))
      case 'call':
        return ofCall(e.function, e.arguments)
      default:
        return []
    }
  }
  const ofName = (e: NameNode): readonly string[] => {
    if (isScenario(e)) return []
    const key = nameKey(e)
    if (key === e.name) return ofQuantity(key)
    const solve = catalog.solves.get(e.of ?? '')
    const parameters = catalog.functions.get(solve?.function ?? '')?.parameters ?? []
    const needed = solve?.inputs.filter((_, i) => !parameters[i]?.optional) ?? []
    return unique(needed.flatMap((input) => (input === undefined ? [] : ofQuantity(input))))
  }
  const ofCall = (called: string, args: readonly Expression[]): readonly string[] => {
    const [first, ...others] = args
    if (called === 'MISSING' || !first) return []
    if (called === 'DEFAULT') return alternatives(ofTree(first), together(others))
    if (CHOOSING.has(called)) {
      const names = ofTree(first)
      return names.length > 0 ? names : together(others)
    }
    const parameters = catalog.functions.get(called)?.parameters
    return together(args.filter((_, i) => !parameters?.[i]?.optional))
  }
  const together = (trees: readonly Expression[]): readonly string[] => unique(trees.flatMap(ofTree))

  search(quantity)
  return ofQuantity(quantity)
}

/** Of operators in a row, `a + b + c`, without recursion down their left side. */
function operands(e: Extract<Expression, { kind: 'binary' }>): readonly Expression[] {
  const rights: Expression[] = []
  let left: Expression = e
  for (; left.kind === 'binary'; left = left.left) rights.push(left.right)
  return [left, ...rights.reverse()]
}

/** Their first argument decides which of the others is looked at. */
const CHOOSING = new Set(['IF', 'SWITCH', 'CHOOSE'])

function alternatives([x]: readonly string[], [y]: readonly string[]): readonly string[] {
  if (x === undefined || y === undefined) return []
  return [unique([...x.split('|'), ...y.split('|')]).join('|')]
}

function unique(names: readonly string[]): readonly string[] {
  return [...new Set(names)]
}
