import { isProblem, type Problem, problem } from '../words/problem'
import { type Database, openDatabase, strictly } from './database'
import { type KeptMapping, LAB_STORES, type StoredImport } from './records'
import { storageProblem } from './storageProblem'

/**
 * The lab files that were read in and kept, and the mappings that were given a name. An import is written once and never
 * changed. `Head` is what a list shows of it, `Body` its columns: plain data and typed arrays, as they were put in. The
 * file itself stands beside them, so that what was read can be held to what was sent.
 */
export interface Imports<Head extends { readonly id: string }, Body> {
  /** the last read first */
  list(): Promise<readonly Head[] | Problem>
  /** all of it in one transaction, or nothing */
  put(head: Head, body: Body, file: Blob): Promise<undefined | Problem>
  body(id: string): Promise<Body | Problem>
  /** null: it was kept before files were */
  file(id: string): Promise<Blob | null | Problem>
  remove(id: string): Promise<undefined | Problem>
  /** the last kept last */
  mappings(): Promise<readonly KeptMapping[] | Problem>
  /** one of the same name is replaced */
  putMapping(name: string, text: string): Promise<undefined | Problem>
  removeMapping(name: string): Promise<undefined | Problem>
  close(): void
}

/** @param now the clock, milliseconds since 1970 */
export async function openImports<Head extends { readonly id: string }, Body>(
  name = 'basinbook',
  now: () => number = Date.now,
): Promise<Imports<Head, Body> | Problem> {
  const database = await openDatabase(name)
  return isProblem(database) ? database : importsOn(database, now)
}

function importsOn<Head extends { readonly id: string }, Body>(
  database: Database,
  now: () => number,
): Imports<Head, Body> {
  const answered = <T>(work: Promise<T>): Promise<T | Problem> => work.catch(storageProblem)
  return {
    list: () =>
      answered(
        database.getAll('imports').then((all) => {
          const heads = [...all].sort((a, b) => b.kept - a.kept)
          return heads.map(({ head }) => head as Head)
        }),
      ),
    put: (head, body, file) =>
      strictly(database, LAB_STORES, async (writing) => {
        const imports = writing.objectStore('imports')
        if ((await imports.getKey(head.id)) !== undefined) return problem('import_kept_already')
        const entry: StoredImport = { id: head.id, kept: now(), head }
        await writing.objectStore('import_columns').add({ id: head.id, body })
        await writing.objectStore('import_files').add({ id: head.id, file })
        await imports.add(entry)
        return undefined
      }),
    body: (id) =>
      answered(
        database.get('import_columns', id).then((found) => (found ? (found.body as Body) : problem('import_not_kept'))),
      ),
    file: (id) => answered(database.get('import_files', id).then((found) => found?.file ?? null)),
    remove: (id) =>
      strictly(database, LAB_STORES, async (writing) => {
        const stores = ['imports', 'import_columns', 'import_files'] as const
        await Promise.all(stores.map((store) => writing.objectStore(store).delete(id)))
        return undefined
      }),
    mappings: () => answered(database.getAll('mappings').then((all) => [...all].sort((a, b) => a.kept - b.kept))),
    putMapping: (name, text) =>
      strictly(database, LAB_STORES, async (writing) => {
        await writing.objectStore('mappings').put({ name, kept: now(), text })
        return undefined
      }),
    removeMapping: (name) =>
      strictly(database, LAB_STORES, async (writing) => {
        await writing.objectStore('mappings').delete(name)
        return undefined
      }),
    close: () => database.close(),
  }
}
