import type { Notebook } from '../../notebook/notebook'
import type { Problem } from '../../words/problem'

/** A notebook out of a file, or all that is wrong with it. The reader's schema comes with the first file. */
export async function readNotebookFile(file: File): Promise<Notebook | Problem[]> {
  const [{ fromFile }, { checkNotebook }, { catalogFor }] = await Promise.all([
    import('../../notebook/file'),
    import('../../notebook/checkNotebook'),
    import('../../worksheet/catalogFor'),
  ])
  const read = fromFile(await file.text(), file.name)
  if (Array.isArray(read)) return read
  const faults = checkNotebook(read, catalogFor(read.worksheets, read.rows), file.name)
  return faults.length > 0 ? faults : read
}
