import type { Outline } from './catalog'

const names = new WeakMap<Outline, ReadonlySet<string>>()

/** All quantities, and all outputs of solves as `water.lsi`: what a formula of a notebook's own may name. */
export function knownNames(catalog: Outline): ReadonlySet<string> {
  const before = names.get(catalog)
  if (before !== undefined) return before
  const outputs = [...catalog.solves.values()].flatMap((solve) =>
    solve.outputs.map((output) => `${solve.id}.${output}`),
  )
  const known = new Set([...catalog.quantities.keys(), ...outputs])
  names.set(catalog, known)
  return known
}
