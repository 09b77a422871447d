import { isDefinition, readDefinition } from '../../worksheet/readDefinition'
import type { Source } from '../../worksheet/source'

/** A notebook's own worksheets as sources of a catalog; those that cannot be read are not in it. */
export function ownSources(worksheets: Readonly<Record<string, unknown>>): readonly Source[] {
  return Object.entries(worksheets).flatMap(([id, json]) => {
    const definition = readDefinition(json, id)
    return isDefinition(definition) ? [{ definition, file: id, shipped: false }] : []
  })
}
