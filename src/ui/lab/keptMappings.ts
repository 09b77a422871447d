import { isMapping, type Mapping, mappingOf, readMapping } from '../../intake/mapping'
import type { Understanding } from '../../intake/understanding'
import { isProblem, type Problem } from '../../words/problem'
import { withLabStore } from './labStore'

/** The mappings that this browser keeps, the last kept last; one that cannot be read any more is left out. */
export async function keptMappings(): Promise<readonly Mapping[]> {
  const kept = await withLabStore((store) => store.mappings())
  if (isProblem(kept)) return []
  return kept.flatMap(({ name, text }) => {
    const mapping = readMapping(text, name)
    return isMapping(mapping) ? [mapping] : []
  })
}

/** Keeps how a file was understood, under a name. */
export function keepMapping(understanding: Understanding, name: string): Promise<undefined | Problem> {
  return withLabStore((store) => store.putMapping(name, JSON.stringify(mappingOf(understanding, name))))
}
