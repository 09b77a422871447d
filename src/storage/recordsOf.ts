import { type Database, keysOf } from './database'
import { type Entry, type LogRecord, type Snapshot, STORES } from './records'

/** All that a notebook is read from. */
export interface NotebookRecords {
  readonly entry: Entry | undefined
  readonly snapshots: readonly Snapshot[]
  readonly log: readonly LogRecord[]
}

/** The records of one notebook, as of one moment. */
export async function recordsOf(database: Database, id: string): Promise<NotebookRecords> {
  const reading = database.transaction(STORES)
  const [entry, snapshots, log] = await Promise.all([
    reading.objectStore('notebooks').get(id),
    reading.objectStore('snapshots').getAll(keysOf(id)),
    reading.objectStore('log').getAll(keysOf(id)),
    reading.done,
  ])
  return { entry, snapshots, log }
}
