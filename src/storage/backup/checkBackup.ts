import { fromFile } from '../../notebook/file'
import { type Problem, problem } from '../../words/problem'
import type { Fault } from './faultProblem'
import { unpacked } from './packed'
import type { Progress } from './progress'
import { type Read, readRecords } from './readRecords'
import type { BackupRecord, RecordOf } from './record'

/** What the storage cannot judge of a lab file and of a mapping: whether they are ones. Null when they are. */
export interface Judges {
  readonly lab: (head: unknown, body: unknown) => Problem | null
  readonly mapping: (text: string) => Problem | null
}

/** What a backup holds, before anything of it is taken in. */
export interface Contents {
  /** when it was made, milliseconds since 1970 */
  readonly made: number
  readonly notebooks: readonly string[]
  readonly states: number
  readonly mappings: number
  readonly imports: number
  /** notebooks that could not be read already when it was made */
  readonly damaged: readonly string[]
  /** what is not as it was written, or cannot be what it says; each with its place */
  readonly faults: readonly Fault[]
}

/** A backup with more faults than this is not worth more reading. */
const MOST_FAULTS = 20

/** Reads a backup from end to end and holds every record to its hash, its shape and what it has to be. Writes nothing. */
export async function checkBackup(
  file: Blob,
  name: string,
  judges: Judges,
  progress: Progress,
): Promise<Contents | Problem> {
  const found = { made: 0, states: 0, mappings: 0, imports: 0 }
  const notebooks: string[] = []
  const damaged: string[] = []
  const faults: Fault[] = []
  for await (const read of soundRecords(readRecords(file, name, progress), name, judges)) {
    if ('why' in read) {
      if (read.why.code === 'stopped' || read.why.code === 'backup_none') return read.why
      faults.push({ at: read.at, why: read.why })
      if (faults.length >= MOST_FAULTS) break
      continue
    }
    const { record } = read
    if (record.kind === 'header') found.made = record.made
    if (record.kind === 'notebook') notebooks.push(record.name)
    if (record.kind === 'damaged') damaged.push(record.name)
    if (record.kind === 'state') found.states++
    if (record.kind === 'mapping') found.mappings++
    if (record.kind === 'import') found.imports++
  }
  return { ...found, notebooks, damaged, faults }
}

/** The records again, those that cannot be what they say as problems; the parts of what was refused are left out with it. */
export async function* soundRecords(records: AsyncGenerator<Read>, name: string, judges: Judges): AsyncGenerator<Read> {
  const refused = new Set<string>()
  for await (const read of records) {
    if ('why' in read) {
      yield read
      continue
    }
    const { record, at } = read
    if (record.kind === 'state' && refused.has(`notebook ${record.notebook}`)) continue
    if (record.kind === 'file' && refused.has(`import ${record.import}`)) continue
    const why = faultOf(record, name, judges)
    if (why === null) yield read
    else {
      if ('id' in record) refused.add(`${record.kind} ${record.id}`)
      yield { at, why }
    }
  }
}

function faultOf(record: BackupRecord, name: string, judges: Judges): Problem | null {
  switch (record.kind) {
    case 'notebook':
      return notebookFault(record.text, record.id, record.name)
    case 'state':
      return notebookFault(record.text, record.notebook, name)
    case 'mapping':
      return judges.mapping(record.text)
    case 'import':
      return judges.lab(record.head, unpacked(record.body)) ?? otherId(record)
    default:
      return null
  }
}

function notebookFault(text: string, id: string, name: string): Problem | null {
  const read = fromFile(text, name)
  if (Array.isArray(read)) return read[0] ?? problem('not_a_notebook', [name])
  return read.id === id ? null : problem('file_other_id', [name, 'id'], { id })
}

function otherId({ id, head }: RecordOf<'import'>): Problem | null {
  const same = typeof head === 'object' && head !== null && 'id' in head && head.id === id
  return same ? null : problem('file_other_id', ['head', 'id'], { id })
}
