import type { Problem } from '../../words/problem'
import type { Definition } from '../../worksheet/definition'

/**
 * A worksheet definition out of a file, tried out beside the notebook's other worksheets; or all that is wrong with it.
 */
export async function readWorksheetFile(
  file: File,
  beside: Readonly<Record<string, unknown>>,
): Promise<Definition | readonly Problem[]> {
  const [
    { parseDefinitionText },
    { isDefinition },
    { buildCatalog, isCatalog },
    { SHIPPED },
    { LOCKED },
    { ownSources },
  ] = await Promise.all([
    import('../../worksheet/parseDefinitionText'),
    import('../../worksheet/readDefinition'),
    import('../../worksheet/buildCatalog'),
    import('../../worksheet/shipped'),
    import('../../functions/registry'),
    import('./ownSources'),
  ])
  const read = parseDefinitionText(await file.text(), file.name)
  if (!isDefinition(read)) return read
  const others = ownSources(beside).filter(({ definition }) => definition.id !== read.id)
  const catalog = buildCatalog([...SHIPPED, ...others, { definition: read, file: file.name, shipped: false }], LOCKED)
  return isCatalog(catalog) ? read : catalog.filter(({ path }) => path[0] === file.name)
}
