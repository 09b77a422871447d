import type { SolveBlock } from './catalog'
import type { Expression } from './formula'
import { nameKey } from './nameKey'
import { visit } from './visit'

/** The quantities that a formula reads, in whichever scenario; behind a solve's output stand the solve's inputs. */
export function readsOf(tree: Expression, solves: ReadonlyMap<string, Pick<SolveBlock, 'inputs'>>): readonly string[] {
  const reads = new Set<string>()
  visit(tree, (node) => {
    if (node.kind !== 'name') return
    const key = nameKey(node)
    if (key === node.name) reads.add(key)
    else for (const input of solves.get(node.of ?? '')?.inputs ?? []) if (input !== undefined) reads.add(input)
  })
  return [...reads]
}
