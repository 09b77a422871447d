import type { LockedFunction } from '../../functions/define'
import { lockedFunction } from '../../functions/registry'
import type { Catalog, Quantity } from '../../worksheet/catalog'
import type { Expression } from '../../worksheet/formula'

/** The locked functions that a quantity's formula calls, and those of the solves that it reads, as they stand in it. */
export function functionsOf(quantity: Quantity, catalog: Catalog): readonly LockedFunction[] {
  const found = new Map<string, LockedFunction>()
  const add = (name: string | undefined) => {
    const known = name === undefined ? undefined : lockedFunction(name)
    if (known) found.set(known.name, known)
  }
  const walk = (tree: Expression): void => {
    switch (tree.kind) {
      case 'name':
        if (tree.of !== null && !tree.quoted) add(catalog.solves.get(tree.of)?.function)
        break
      case 'call':
        add(tree.function)
        tree.arguments.forEach(walk)
        break
      case 'unary':
        walk(tree.operand)
        break
      case 'binary':
        walk(tree.left)
        walk(tree.right)
    }
  }
  if (quantity.formula) walk(quantity.formula.tree)
  return [...found.values()]
}
