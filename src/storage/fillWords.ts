import type { IDBPTransaction, StoreNames } from 'idb'
import { isProblem } from '../words/problem'
import { folded } from './folded'
import type { Entry, LogRecord, Schema, Snapshot } from './records'
import { replay } from './replay'
import { searchedOf } from './searched'

type Upgrading = IDBPTransaction<Schema, StoreNames<Schema>[], 'versionchange'>

/** An entry of a store that was not searched by place and note. */
type Old = Pick<Entry, 'id' | 'name' | 'changed' | 'head' | 'snapshot'>

/** Gives each entry the words that it is found by; one whose notebook cannot be read is found by its name. */
export async function fillWords(upgrading: Upgrading): Promise<void> {
  const notebooks = upgrading.objectStore('notebooks')
  for (const id of await notebooks.getAllKeys()) {
    const entry: Old | undefined = await notebooks.get(id)
    if (entry === undefined) continue
    const keys = IDBKeyRange.bound([id], [id, []])
    const snapshots: readonly Snapshot[] = await upgrading.objectStore('snapshots').getAll(keys)
    const log: readonly LogRecord[] = await upgrading.objectStore('log').getAll(keys)
    const notebook = replay({ ...entry, place: '', words: '' }, snapshots, log)
    const found = isProblem(notebook) ? onlyName(entry.name) : searchedOf(notebook)
    await notebooks.put({ ...entry, ...found })
  }
}

function onlyName(name: string) {
  return { place: '', words: folded(name) }
}
