import type { Outline } from '../worksheet/catalog'

/** Everything that a quantity's value can hang on, itself first. */
export function restsOn({ quantities }: Pick<Outline, 'quantities'>, quantity: string): ReadonlySet<string> {
  const found = new Set([quantity])
  // A set that grows while it is walked is walked to its end.
  for (const name of found) for (const read of quantities.get(name)?.reads ?? []) found.add(read)
  return found
}
