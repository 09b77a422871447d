import { type IDBPDatabase, type IDBPTransaction, openDB, type StoreNames } from 'idb'
import { isProblem, type Problem, problem } from '../words/problem'
import type { fillWords } from './fillWords'
import type { Schema } from './records'
import { storageProblem } from './storageProblem'

export type Database = IDBPDatabase<Schema>
type Names = readonly StoreNames<Schema>[]

const VERSION = 3

/** The database; a problem when the browser has none to give, or another tab holds an older version of it open. */
export async function openDatabase(name: string): Promise<Database | Problem> {
  let older = false
  const answer = await opened(name, null, () => {
    older = true
  })
  if (!older) return answer
  // What reads notebooks is not in the first load, and a transaction does not outlast the wait for it: it is tried again.
  try {
    const { fillWords } = await import('./fillWords')
    return await opened(name, fillWords, () => undefined)
  } catch (error) {
    return notOpened(error)
  }
}

/** @param fill what an older database's entries are given their words with; without it that is told, and nothing changed */
function opened(name: string, fill: typeof fillWords | null, isOlder: () => void): Promise<Database | Problem> {
  return new Promise<Database | Problem>((resolve) => {
    let given = false
    const give = (answer: Database | Problem): void => {
      if (!given) resolve(answer)
      else if ('close' in answer) answer.close()
      given = true
    }
    const opening = openDB<Schema>(name, VERSION, {
      async upgrade(database, from, _to, upgrading) {
        if (from > 0 && from < 3 && fill === null) {
          isOlder()
          // `done` tells of the abort too, and so does the opening itself
          upgrading.done.catch(() => undefined)
          upgrading.abort()
          return
        }
        if (from < 1) {
          database.createObjectStore('notebooks', { keyPath: 'id' })
          database.createObjectStore('log', { keyPath: ['notebook', 'seq'] })
          database.createObjectStore('snapshots', { keyPath: ['notebook', 'seq'] })
        }
        if (from < 2) {
          database.createObjectStore('imports', { keyPath: 'id' })
          database.createObjectStore('import_columns', { keyPath: 'id' })
          database.createObjectStore('mappings', { keyPath: 'name' })
        }
        if (from < 3) {
          database.createObjectStore('import_files', { keyPath: 'id' })
          database.createObjectStore('states', { keyPath: ['notebook', 'seq'] })
          database.createObjectStore('exports', { keyPath: 'id' })
          if (from > 0) await fill?.(upgrading)
        }
      },
      blocked: () => give(problem('storage_held')),
      // a newer version of the page waits: let go, so that it is not held up; what this tab writes next is refused
      blocking: (_from, _to, event) => (event.target as IDBDatabase).close(),
    })
    opening.then(give, (error: unknown) => give(notOpened(error)))
  }).catch(notOpened)
}

/** Without a database to speak of, the browser's names tell a refusal from a fault badly: both mean that nothing can be kept. */
function notOpened(error: unknown): Problem {
  const why = storageProblem(error)
  return why.code === 'storage_newer' || why.code === 'storage_full' ? why : problem('storage_blocked')
}

/**
 * Work in one transaction that is on the disk when this resolves: `durability: 'strict'`, because an acknowledged
 * relaxed write can be lost with the tab. Nothing is written when the work throws or answers with a problem.
 */
export async function strictly<T, const S extends Names>(
  database: Database,
  stores: S,
  work: (writing: IDBPTransaction<Schema, S, 'readwrite'>) => Promise<T>,
): Promise<T | Problem> {
  let writing: IDBPTransaction<Schema, S, 'readwrite'> | undefined
  try {
    writing = database.transaction(stores, 'readwrite', { durability: 'strict' })
    const done = writing.done
    // a refused request rejects before `done` is awaited
    done.catch(() => undefined)
    const result = await work(writing)
    if (isProblem(result)) undo(writing)
    else await done
    return result
  } catch (error) {
    const why = storageProblem(writing?.error ?? error)
    if (writing) undo(writing)
    return why
  }
}

/** A transaction that is left alone commits what was asked of it, also where the rest of its work could not be asked. */
function undo(writing: { abort(): void }): void {
  try {
    writing.abort()
  } catch {
    // It was over already: nothing of it is left, or nothing was asked of it.
  }
}

/** Every key that begins with one notebook's id, as in `log` and `snapshots`, up to and with a sequence number when one is given. */
export function keysOf(notebook: string, upTo?: number): IDBKeyRange {
  return IDBKeyRange.bound([notebook], [notebook, upTo ?? []])
}
