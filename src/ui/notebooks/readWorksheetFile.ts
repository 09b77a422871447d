import { type Problem, problem } from '../../words/problem'
import type { Definition } from '../../worksheet/definition'
import type { OwnParts } from '../../worksheet/ownWorksheets'

/**
 * A worksheet definition out of a file, tried out beside the notebook's other worksheets; or all that is wrong with it.
 */
export async function readWorksheetFile(
  file: File,
  { worksheets, rows }: OwnParts,
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
  const others = ownSources(worksheets).filter(({ definition }) => definition.id !== read.id)
  const catalog = buildCatalog([...SHIPPED, ...others, { definition: read, file: file.name, shipped: false }], LOCKED)
  if (!isCatalog(catalog)) return catalog.filter(({ path }) => path[0] === file.name)
  // It may not take a name away from a row that the reader added.
  const names = new Set(Object.values(rows).map(({ row }) => row.name))
  const clash = [...catalog.quantities.values()].find(({ name, worksheet }) => worksheet === read.id && names.has(name))
  return clash ? [problem('row_name_taken', [], { name: clash.name })] : read
}
