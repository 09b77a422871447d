import type { Notebook } from '../../notebook/notebook'
import type { Problem } from '../../words/problem'

/** A notebook out of a file, or all that is wrong with it. The reader's schema comes with the first file. */
export async function readNotebookFile(file: File): Promise<Notebook | Problem[]> {
  const [{ fromFile }, { checkNotebook }, { catalogFor }, { freedNames }, { shippedCatalog }] = await Promise.all([
    import('../../notebook/file'),
    import('../../notebook/checkNotebook'),
    import('../../worksheet/catalogFor'),
    import('../../notebook/freedNames'),
    import('../../worksheet/shippedCatalog'),
  ])
  const written = fromFile(await file.text(), file.name)
  if (Array.isArray(written)) return written
  const read = freedNames(written, shippedCatalog())?.notebook ?? written
  const faults = checkNotebook(read, catalogFor(read.worksheets, read.rows), file.name)
  return faults.length > 0 ? faults : read
}
