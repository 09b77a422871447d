import { LOCKED } from '../functions/registry'
import { buildCatalog, isCatalog } from './buildCatalog'
import type { Catalog } from './catalog'
import { SHIPPED } from './shipped'

let built: Catalog | null = null

/**
 * The catalog of the shipped worksheets alone; made once.
 * @throws RangeError when they do not fit the registry: a defect of ours.
 */
export function shippedCatalog(): Catalog {
  if (built) return built
  const catalog = buildCatalog(SHIPPED, LOCKED)
  if (!isCatalog(catalog)) throw new RangeError(catalog.map((problem) => JSON.stringify(problem)).join('\n'))
  built = catalog
  return catalog
}
