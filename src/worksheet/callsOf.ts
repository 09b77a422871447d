import type { LockedFunction } from '../functions/define'
import type { SolveBlock } from './catalog'
import type { Expression } from './formula'
import { visit } from './visit'

/** The locked functions that a formula calls, and those of the solves that it reads, as they stand in it. */
export function callsOf(
  tree: Expression,
  solves: ReadonlyMap<string, Pick<SolveBlock, 'function'>>,
  functions: ReadonlyMap<string, LockedFunction>,
): readonly string[] {
  const calls = new Set<string>()
  visit(tree, (node) => {
    if (node.kind === 'call' && functions.has(node.function)) calls.add(node.function)
    const solve = node.kind === 'name' && !node.quoted ? solves.get(node.of ?? '') : undefined
    if (solve) calls.add(solve.function)
  })
  return [...calls]
}
