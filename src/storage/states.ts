import type { IDBPTransaction } from 'idb'
import type { Notebook } from '../notebook/notebook'
import { toFile } from '../notebook/toFile'
import { type Problem, problem } from '../words/problem'
import { type Database, keysOf } from './database'
import { ladder } from './ladder'
import type { Schema, STORES } from './records'

/** An earlier state as a list shows it. */
export interface StateEntry {
  readonly seq: number
  /** when the notebook was last changed then, milliseconds since 1970 */
  readonly at: number
}

type Writing = IDBPTransaction<Schema, typeof STORES, 'readwrite'>

/** Keeps the notebook as it is after the edit `seq`, within the transaction of the edit that follows, and thins the older ones. */
export async function keepState(
  writing: Writing,
  notebook: Notebook,
  kept: StateEntry,
  now: number,
): Promise<undefined> {
  const states = writing.objectStore('states')
  await states.put({ notebook: notebook.id, ...kept, text: toFile(notebook) })
  const all = await states.getAll(keysOf(notebook.id))
  const standing = new Set(
    ladder(
      all.map(({ seq, at, text }) => ({ seq, at, size: text.length })),
      now,
    ),
  )
  await Promise.all(all.filter(({ seq }) => !standing.has(seq)).map(({ seq }) => states.delete([notebook.id, seq])))
}

/** The latest first. */
export async function statesOf(database: Database, notebook: string): Promise<readonly StateEntry[]> {
  const all = await database.getAll('states', keysOf(notebook))
  return all.map(({ seq, at }) => ({ seq, at })).reverse()
}

export async function stateOf(database: Database, notebook: string, seq: number): Promise<Notebook | Problem> {
  const found = await database.get('states', [notebook, seq])
  if (found === undefined) return problem('state_gone')
  const { fromFile } = await import('../notebook/file')
  const read = fromFile(found.text, notebook)
  return Array.isArray(read) ? (read[0] ?? problem('state_damaged')) : read
}
