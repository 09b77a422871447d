import { isProblem, type Problem } from '../words/problem'
import { openDatabase, strictly } from './database'
import type { StoredExport } from './records'
import { storageProblem } from './storageProblem'

/**
 * What left this browser as a file. The browser cannot reach those files any more; the list says which there are when
 * somebody asks for everything to be deleted.
 */
export interface Exports {
  /** the last saved first */
  list(): Promise<readonly StoredExport[] | Problem>
  add(saved: StoredExport): Promise<undefined | Problem>
  close(): void
}

export async function openExports(name = 'basinbook'): Promise<Exports | Problem> {
  const database = await openDatabase(name)
  if (isProblem(database)) return database
  return {
    list: () =>
      database
        .getAll('exports')
        .then((all) => all.sort((a, b) => b.when - a.when))
        .catch(storageProblem),
    add: (saved) =>
      strictly(database, ['exports'], async (writing) => {
        await writing.objectStore('exports').put(saved)
        return undefined
      }),
    close: () => database.close(),
  }
}
