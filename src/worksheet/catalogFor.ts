import { LOCKED } from '../functions/registry'
import type { Problem } from '../words/problem'
import { buildCatalog, isCatalog } from './buildCatalog'
import type { Catalog } from './catalog'
import { isDefinition, readDefinition } from './readDefinition'
import { SHIPPED } from './shipped'
import { shippedCatalog } from './shippedCatalog'
import type { Source } from './source'

export interface WithOwn {
  readonly catalog: Catalog
  /** why some of the reader's own worksheets are not in it */
  readonly refused: readonly Problem[]
}

/**
 * The shipped worksheets and a notebook's own, by id. A worksheet of its own that is refused is left out with all its
 * problems, so that a notebook made with other worksheets still opens; those that need it are then left out too.
 */
export function catalogWith(worksheets: Readonly<Record<string, unknown>>): WithOwn {
  let catalog = shippedCatalog()
  const refused: Problem[] = []
  const own: Source[] = []
  for (const [id, json] of Object.entries(worksheets)) {
    const definition = readDefinition(json, id)
    if (isDefinition(definition)) own.push({ definition, file: id, shipped: false })
    else refused.push(...definition)
  }
  let left = own
  while (left.length > 0) {
    const built = buildCatalog([...SHIPPED, ...left], LOCKED)
    if (isCatalog(built)) {
      catalog = built
      break
    }
    const bad = new Set(built.map(({ path }) => path[0]))
    refused.push(...built)
    const kept = left.filter(({ file }) => !bad.has(file))
    left = kept.length < left.length ? kept : []
  }
  return { catalog, refused }
}

export function catalogFor(worksheets: Readonly<Record<string, unknown>>): Catalog {
  return catalogWith(worksheets).catalog
}
