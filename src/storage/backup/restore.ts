import { newId } from '../../notebook/create'
import { fromFile } from '../../notebook/file'
import type { Notebook } from '../../notebook/notebook'
import { toFile } from '../../notebook/toFile'
import { isProblem, type Problem, problem } from '../../words/problem'
import { type Database, keysOf, openDatabase, strictly } from '../database'
import { LAB_STORES, STORES } from '../records'
import { recordsOf } from '../recordsOf'
import { replay } from '../replay'
import { searchedOf } from '../searched'
import { storageProblem } from '../storageProblem'
import { type Judges, soundRecords } from './checkBackup'
import { type Fault, faultProblem } from './faultProblem'
import { bytesOf, packed, unpacked } from './packed'
import type { Progress } from './progress'
import { readRecords } from './readRecords'
import type { RecordOf } from './record'

/** How a thing is called whose own name is taken here. */
export type Renamed = (name: string, made: number) => string

export interface Restored {
  readonly notebooks: number
  readonly states: number
  readonly mappings: number
  readonly imports: number
  /** what is here already, just as the backup has it */
  readonly same: number
  /** what was there under its own id or name, and otherwise, so that it came beside it under another */
  readonly renamed: number
}

interface Taking {
  readonly database: Database
  readonly made: number
  readonly renamed: Renamed
  readonly count: { -readonly [K in keyof Restored]: Restored[K] }
  /** ids of notebooks under which they came in, by those that they had; none where they are here already */
  readonly notebooks: Map<string, string>
  /** what takes each thing away again that came in */
  readonly undo: (() => Promise<unknown>)[]
}

/**
 * Takes in what a backup holds, beside what is here and never over it. What is here just the same is left alone; where an id is
 * taken by something else, it comes under a new one. Records that are damaged are left out when `whole` is false, else nothing is
 * taken in. When it is stopped, or the browser has no room, all that came in is taken away again.
 */
export async function restore(
  file: Blob,
  name: string,
  options: { readonly judges: Judges; readonly renamed: Renamed; readonly whole: boolean; readonly database?: string },
  progress: Progress,
): Promise<Restored | Problem> {
  const database = await openDatabase(options.database ?? 'basinbook')
  if (isProblem(database)) return database
  const count = { notebooks: 0, states: 0, mappings: 0, imports: 0, same: 0, renamed: 0 }
  const taking: Taking = { database, made: 0, renamed: options.renamed, count, notebooks: new Map(), undo: [] }
  const failed = await takeAll(taking, file, name, options, progress).catch(storageProblem)
  if (isProblem(failed)) for (const back of taking.undo.reverse()) await back().catch(() => undefined)
  database.close()
  return failed ?? count
}

async function takeAll(
  start: Taking,
  file: Blob,
  name: string,
  { judges, whole }: { readonly judges: Judges; readonly whole: boolean },
  progress: Progress,
): Promise<undefined | Problem> {
  let taking = start
  /** an import waits for the pieces of its file */
  let waiting: { readonly record: RecordOf<'import'>; readonly pieces: Uint8Array<ArrayBuffer>[] } | null = null
  for await (const read of soundRecords(readRecords(file, name, progress), name, judges)) {
    if (progress.stop.aborted) return problem('stopped')
    if ('why' in read) {
      if (read.why.code === 'stopped') return read.why
      if (whole) return faultOfWhole(read, name)
      continue
    }
    const { record } = read
    let refused: undefined | Problem
    if (waiting !== null && record.kind !== 'file') {
      // pieces of its file were damaged: what was read out of it is whole all the same
      refused = await takeImport(taking, waiting.record, [])
      waiting = null
      if (isProblem(refused)) return refused
    }
    if (record.kind === 'header') taking = { ...taking, made: record.made }
    else if (record.kind === 'notebook') refused = await takeNotebook(taking, record)
    else if (record.kind === 'state') refused = await takeState(taking, record)
    else if (record.kind === 'mapping') refused = await takeMapping(taking, record)
    else if (record.kind === 'import') waiting = { record, pieces: [] }
    else if (record.kind === 'file' && waiting?.record.id === record.import) {
      const bytes = record.part === waiting.pieces.length ? bytesOf(record.base64) : null
      if (bytes !== null) waiting.pieces.push(bytes)
    }
    if (waiting !== null && waiting.pieces.length === waiting.record.files) {
      refused = await takeImport(taking, waiting.record, waiting.pieces)
      waiting = null
    }
    if (isProblem(refused)) return refused
  }
  return waiting === null ? undefined : takeImport(taking, waiting.record, [])
}

/** It was looked through before; what is wrong now has come since. */
function faultOfWhole({ at, why }: Fault, name: string): Problem {
  return why.code.startsWith('backup_')
    ? faultProblem({ at, why }, name)
    : problem('backup_changed', [name], { record: at })
}

async function takeNotebook(taking: Taking, record: RecordOf<'notebook'>): Promise<undefined | Problem> {
  const { database, count } = taking
  const read = fromFile(record.text, record.name)
  if (Array.isArray(read)) return read[0]
  const here = await recordsOf(database, record.id)
  let notebook: Notebook = read
  if (here.entry !== undefined) {
    const there = replay(here.entry, here.snapshots, here.log)
    if (!isProblem(there) && toFile(there) === toFile(read)) {
      count.same++
      return undefined
    }
    notebook = { ...read, id: newId(), name: taking.renamed(read.name, taking.made) }
    count.renamed++
  }
  const { id, name } = notebook
  const { head, changed } = record
  const refused = await strictly(database, STORES, async (writing) => {
    await writing.objectStore('snapshots').add({ notebook: id, seq: head, text: toFile(notebook) })
    await writing.objectStore('notebooks').add({ id, name, ...searchedOf(notebook), changed, head, snapshot: head })
    return undefined
  })
  if (isProblem(refused)) return refused
  taking.notebooks.set(record.id, id)
  taking.undo.push(() => removeNotebook(database, id))
  count.notebooks++
  return undefined
}

function removeNotebook(database: Database, id: string): Promise<unknown> {
  return strictly(database, STORES, async (writing) => {
    await writing.objectStore('notebooks').delete(id)
    for (const store of ['log', 'snapshots', 'states'] as const) await writing.objectStore(store).delete(keysOf(id))
    return undefined
  })
}

async function takeState(taking: Taking, record: RecordOf<'state'>): Promise<undefined | Problem> {
  const id = taking.notebooks.get(record.notebook)
  // of a notebook that is here already
  if (id === undefined) return undefined
  const read = fromFile(record.text, record.notebook)
  if (Array.isArray(read)) return read[0]
  const refused = await strictly(taking.database, ['states'], async (writing) => {
    const { seq, at } = record
    await writing.objectStore('states').put({ notebook: id, seq, at, text: toFile({ ...read, id }) })
    return undefined
  })
  if (!isProblem(refused)) taking.count.states++
  return refused
}

async function takeMapping(taking: Taking, record: RecordOf<'mapping'>): Promise<undefined | Problem> {
  const { database, count } = taking
  const there = await database.get('mappings', record.name)
  if (there?.text === record.text) {
    count.same++
    return undefined
  }
  let name = record.name
  for (let more = 1; (await database.getKey('mappings', name)) !== undefined; more++)
    name = `${taking.renamed(record.name, taking.made)}${more > 1 ? ` (${more})` : ''}`
  if (name !== record.name) count.renamed++
  const refused = await strictly(database, ['mappings'], async (writing) => {
    await writing.objectStore('mappings').add({ name, kept: record.kept, text: record.text })
    return undefined
  })
  if (isProblem(refused)) return refused
  taking.undo.push(() => database.delete('mappings', name))
  count.mappings++
  return undefined
}

async function takeImport(
  taking: Taking,
  record: RecordOf<'import'>,
  pieces: readonly Uint8Array<ArrayBuffer>[],
): Promise<undefined | Problem> {
  const { database, count } = taking
  let { id, head } = record
  const there = await database.get('imports', id)
  if (there !== undefined) {
    const columns = await database.get('import_columns', id)
    const asText = (value: unknown) => JSON.stringify(value)
    if (asText(there.head) === asText(head) && asText(packed(columns?.body)) === asText(record.body)) {
      count.same++
      return undefined
    }
    id = newId()
    head = { ...(head as object), id, name: taking.renamed(nameIn(head), taking.made) }
    count.renamed++
  }
  const refused = await strictly(database, LAB_STORES, async (writing) => {
    await writing.objectStore('imports').add({ id, kept: record.kept, head })
    await writing.objectStore('import_columns').add({ id, body: unpacked(record.body) })
    if (pieces.length > 0) await writing.objectStore('import_files').add({ id, file: new Blob([...pieces]) })
    return undefined
  })
  if (isProblem(refused)) return refused
  taking.undo.push(() =>
    strictly(database, LAB_STORES, async (writing) => {
      for (const store of ['imports', 'import_columns', 'import_files'] as const)
        await writing.objectStore(store).delete(id)
      return undefined
    }),
  )
  count.imports++
  return undefined
}

function nameIn(head: unknown): string {
  return typeof head === 'object' && head !== null && 'name' in head ? String(head.name) : ''
}
