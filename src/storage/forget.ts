import { isProblem, type Problem } from '../words/problem'
import { keysOf, openDatabase, strictly } from './database'

/** What is done with lab files that hold rows of the notebook: deleted whole, or kept with those rows blank. */
export interface Forgetting {
  readonly removeImports: readonly string[]
  /** `head` and `body` as they are to stand from now on; the file itself, which has the rows, goes */
  readonly blankImports: readonly { readonly id: string; readonly head: unknown; readonly body: unknown }[]
}

/**
 * Takes all that is kept of a notebook out of every object store, in one transaction: entry with its search words, log,
 * snapshots, the list of files saved from it, and what was asked for of lab files. A store whose key begins with
 * the notebook's id needs no mention here.
 */
export async function forget(
  notebook: string,
  { removeImports, blankImports }: Forgetting,
  name = 'basinbook',
): Promise<undefined | Problem> {
  const database = await openDatabase(name)
  if (isProblem(database)) return database
  const refused = await strictly(database, [...database.objectStoreNames], async (writing) => {
    for (const stored of database.objectStoreNames) {
      const store = writing.objectStore(stored)
      const [first] = Array.isArray(store.keyPath) ? store.keyPath : []
      if (first === 'notebook') await store.delete(keysOf(notebook))
    }
    await writing.objectStore('notebooks').delete(notebook)
    const exported = writing.objectStore('exports')
    for (const saved of await exported.getAll()) if (saved.notebook === notebook) await exported.delete(saved.id)
    for (const id of removeImports)
      for (const store of ['imports', 'import_columns', 'import_files'] as const)
        await writing.objectStore(store).delete(id)
    for (const { id, head, body } of blankImports) {
      const kept = await writing.objectStore('imports').get(id)
      if (kept === undefined) continue
      await writing.objectStore('imports').put({ ...kept, head })
      await writing.objectStore('import_columns').put({ id, body })
      await writing.objectStore('import_files').delete(id)
    }
    return undefined
  })
  database.close()
  return refused
}
