import { toFile } from '../../notebook/toFile'
import { isProblem, type Problem, problem } from '../../words/problem'
import { type Database, keysOf, openDatabase } from '../database'
import { recordsOf } from '../recordsOf'
import { replay } from '../replay'
import { storageProblem } from '../storageProblem'
import { base64Of, packed } from './packed'
import type { Progress } from './progress'
import type { BackupRecord } from './record'
import { sha256 } from './sha256'

/** Bytes of a lab file in one record. */
const PIECE = 1_000_000
/** Packed bytes that are handed to the browser as one part of the file; it keeps large ones outside the memory. */
const PART = 4_000_000

export interface Backup {
  readonly file: Blob
  readonly notebooks: number
  /** notebooks that could not be read: what is stored of them is in the file, and cannot be restored */
  readonly damaged: number
  readonly states: number
  readonly imports: number
  readonly mappings: number
}

/**
 * Everything that this browser keeps, as one file: a line for each record, its SHA-256 before it, packed by gzip. It is written
 * as it is read, a record at a time; each notebook is as of one moment.
 *
 * @param now when it is made, milliseconds since 1970
 */
export async function makeBackup(
  options: { readonly states: boolean },
  { at, stop }: Progress,
  now = Date.now(),
  name = 'basinbook',
): Promise<Backup | Problem> {
  if (globalThis.crypto?.subtle === undefined) return problem('backup_no_hash')
  const database = await openDatabase(name)
  if (isProblem(database)) return database
  const count = { notebooks: 0, damaged: 0, states: 0, imports: 0, mappings: 0 }
  try {
    const lines = linesOf(recordsIn(database, options.states, now, count, at))
    const file = await gathered(streamOf(lines, stop).pipeThrough(new CompressionStream('gzip')))
    return stop.aborted ? problem('stopped') : { file, ...count }
  } catch (error) {
    return stop.aborted ? problem('stopped') : storageProblem(error)
  } finally {
    database.close()
  }
}

async function* recordsIn(
  database: Database,
  withStates: boolean,
  made: number,
  count: Record<'notebooks' | 'damaged' | 'states' | 'imports' | 'mappings', number>,
  at: Progress['at'],
): AsyncGenerator<BackupRecord> {
  yield { kind: 'header', format: 'basinbook-backup', version: 1, made, states: withStates }
  const [notebooks, imports] = await Promise.all([database.getAllKeys('notebooks'), database.getAllKeys('imports')])
  const all = notebooks.length + imports.length
  let done = 0
  for (const id of notebooks) {
    const records = await recordsOf(database, id)
    if (records.entry === undefined) continue
    const { entry, snapshots, log } = records
    const { name, changed, head } = entry
    const notebook = replay(entry, snapshots, log)
    if (isProblem(notebook)) {
      count.damaged++
      yield { kind: 'damaged', id, name, text: JSON.stringify(records) }
    } else {
      count.notebooks++
      yield { kind: 'notebook', id, name, changed, head, text: toFile(notebook) }
    }
    if (withStates && !isProblem(notebook)) {
      for (const { seq, at, text } of await database.getAll('states', keysOf(id))) {
        count.states++
        yield { kind: 'state', notebook: id, seq, at, text }
      }
    }
    at(++done / all)
  }
  for (const { name, kept, text } of await database.getAll('mappings')) {
    count.mappings++
    yield { kind: 'mapping', name, kept, text }
  }
  for (const id of imports) {
    const reading = database.transaction(['imports', 'import_columns', 'import_files'])
    const [entry, columns, file] = await Promise.all([
      reading.objectStore('imports').get(id),
      reading.objectStore('import_columns').get(id),
      reading.objectStore('import_files').get(id),
    ])
    if (entry === undefined || columns === undefined) continue
    count.imports++
    const files = file === undefined ? 0 : Math.max(1, Math.ceil(file.file.size / PIECE))
    yield { kind: 'import', id, kept: entry.kept, head: entry.head, body: packed(columns.body), files }
    for (let part = 0; part < files; part++) {
      const piece = await file?.file.slice(part * PIECE, (part + 1) * PIECE).arrayBuffer()
      yield { kind: 'file', import: id, part, base64: base64Of(new Uint8Array(piece ?? new ArrayBuffer(0))) }
    }
    at(++done / all)
  }
}

async function* linesOf(records: AsyncGenerator<BackupRecord>): AsyncGenerator<string> {
  const hashes: string[] = []
  for await (const record of records) {
    const text = JSON.stringify(record)
    const hash = await sha256(text)
    hashes.push(hash)
    yield `${hash} ${text}\n`
  }
  const end: BackupRecord = { kind: 'end', records: hashes.length, sha256: await sha256(hashes.join('')) }
  const text = JSON.stringify(end)
  yield `${await sha256(text)} ${text}\n`
}

function streamOf(lines: AsyncGenerator<string>, stop: AbortSignal): ReadableStream<Uint8Array<ArrayBuffer>> {
  const encoder = new TextEncoder()
  return new ReadableStream({
    async pull(controller) {
      stop.throwIfAborted()
      const { value, done } = await lines.next()
      if (done) controller.close()
      else controller.enqueue(encoder.encode(value))
    },
  })
}

async function gathered(stream: ReadableStream<Uint8Array<ArrayBuffer>>): Promise<Blob> {
  const parts: Blob[] = []
  let pieces: Uint8Array<ArrayBuffer>[] = []
  let size = 0
  const reader = stream.getReader()
  for (;;) {
    const { value, done } = await reader.read()
    if (done) break
    pieces.push(value)
    size += value.length
    if (size < PART) continue
    parts.push(new Blob(pieces))
    pieces = []
    size = 0
  }
  return new Blob([...parts, ...pieces], { type: 'application/gzip' })
}
