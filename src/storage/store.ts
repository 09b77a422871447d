import { copyNotebook } from '../notebook/create'
import type { Edit } from '../notebook/edit'
import type { Notebook } from '../notebook/notebook'
import { toFile } from '../notebook/toFile'
import { isProblem, type Problem, problem } from '../words/problem'
import { type Database, keysOf, openDatabase, strictly } from './database'
import { entriesIn } from './entries'
import { type Entry, type LogRecord, STORES } from './records'
import { recordsOf } from './recordsOf'
import type { Readable } from './replay'
import { sameWords, searchedOf } from './searched'
import { keepState, type StateEntry, stateOf, statesOf } from './states'
import { storageProblem } from './storageProblem'

/**
 * The notebooks that the browser keeps. Nothing here throws: each answer may be a problem instead, and then nothing
 * was written. What is written was first tried on the notebook as stored, so that it can be read again.
 */
export interface Store {
  /** all notebooks, the last changed first */
  list(): Promise<readonly Entry[] | Problem>
  /** @param proven it was read from a file's text already, so that it is not read again here */
  create(notebook: Notebook, proven?: boolean): Promise<undefined | Problem>
  /** the notebook as it was last written; `append` follows on from here */
  load(id: string): Promise<Notebook | Problem>
  /**
   * Adds edits to the log of a notebook that was created or loaded here. It resolves when they are on the disk. If
   * anyone else has written since, the answer is `written_elsewhere` and nothing is added.
   */
  append(id: string, edits: readonly Edit[]): Promise<undefined | Problem>
  /** a notebook of the same content under a new id; answers with it */
  copy(id: string, name: string): Promise<Notebook | Problem>
  /** for a notebook that is open nowhere; one that is open is renamed by an edit like any other */
  rename(id: string, name: string): Promise<undefined | Problem>
  remove(id: string): Promise<undefined | Problem>
  /** what the notebook was at earlier times, the latest first; `append` keeps one at the start of each stretch of work */
  states(id: string): Promise<readonly StateEntry[] | Problem>
  state(id: string, seq: number): Promise<Notebook | Problem>
  /** the notebook up to the first edit that cannot be read, and how many edits that leaves out */
  readable(id: string): Promise<Readable | Problem>
  /** all that is stored of a notebook, as JSON text: the way out when it cannot be loaded */
  raw(id: string): Promise<string | Problem>
  close(): void
}

/** Edits between two snapshots. */
const SNAPSHOT_EVERY = 100

/** A stretch of work ends with a pause of this length, or is cut after so long, in milliseconds. */
const PAUSE = 5 * 60_000
const LONGEST = 30 * 60_000

/** What this store knows a notebook to be, and up to which edit. */
interface Held {
  readonly notebook: Notebook
  readonly head: number
  /** when the stretch of work began; null before the first edit made here */
  readonly since: number | null
}

/** @param now the clock, milliseconds since 1970 */
export async function openStore(name = 'basinbook', now: () => number = Date.now): Promise<Store | Problem> {
  const database = await openDatabase(name)
  return isProblem(database) ? database : storeOn(database, now)
}

function storeOn(database: Database, now: () => number): Store {
  const held = new Map<string, Held>()
  let last: Promise<unknown> = Promise.resolve()

  /** One thing after another: a write starts from what the one before it has left. */
  function inTurn<T>(work: () => Promise<T>): Promise<T | Problem> {
    const turn = last.then(work).catch(storageProblem)
    last = turn
    return turn
  }

  async function read(id: string): Promise<Held | Problem> {
    const [{ replay }, { entry, snapshots, log }] = await Promise.all([import('./replay'), recordsOf(database, id)])
    if (entry === undefined) return problem('notebook_not_stored')
    const notebook = replay(entry, snapshots, log)
    return isProblem(notebook) ? notebook : { notebook, head: entry.head, since: null }
  }

  async function create(notebook: Notebook, proven: boolean): Promise<undefined | Problem> {
    const { id } = notebook
    const text = toFile(notebook)
    const fault = proven ? undefined : await unreadable(text, id)
    if (fault !== undefined) return fault
    const refused = await strictly(database, STORES, async (writing) => {
      const notebooks = writing.objectStore('notebooks')
      if ((await notebooks.getKey(id)) !== undefined)
        return problem('notebook_stored_already', [], { name: notebook.name })
      await writing.objectStore('snapshots').put({ notebook: id, seq: 0, text })
      const { name } = notebook
      await notebooks.put({ id, name, ...searchedOf(notebook), changed: now(), head: 0, snapshot: 0 })
      return undefined
    })
    if (refused === undefined) held.set(id, { notebook, head: 0, since: null })
    return refused
  }

  async function append(id: string, edits: readonly Edit[]): Promise<undefined | Problem> {
    const from = held.get(id)
    if (from === undefined) return problem('notebook_not_open')
    const { tried } = await import('./tried')
    const next = tried(from.notebook, edits)
    if (isProblem(next)) return next
    if (next.edits.length === 0) return undefined
    const head = from.head + next.edits.length
    let since = from.since
    const refused = await strictly(database, STORES, async (writing) => {
      const entry = await writing.objectStore('notebooks').get(id)
      if (entry === undefined) return problem('notebook_not_stored')
      if (entry.head !== from.head) return problem('written_elsewhere')
      const begins = beginsAnew(from, entry.changed, next.edits)
      if (begins) {
        since = now()
        await keepState(writing, from.notebook, { seq: from.head, at: entry.changed }, since)
      }
      const log = writing.objectStore('log')
      const records = next.edits.map(
        (edit, at): LogRecord => ({ notebook: id, seq: from.head + 1 + at, format: next.notebook.version, edit }),
      )
      await Promise.all(records.map((record) => log.add(record)))
      const due = head - entry.snapshot >= SNAPSHOT_EVERY
      if (due) {
        const snapshots = writing.objectStore('snapshots')
        // the snapshot before this one stays, with the edits since then
        await Promise.all([
          snapshots.delete(keysOf(id, entry.snapshot - 1)),
          log.delete(keysOf(id, entry.snapshot)),
          snapshots.put({ notebook: id, seq: head, text: toFile(next.notebook) }),
        ])
      }
      const snapshot = due ? head : entry.snapshot
      const { name } = next.notebook
      const searched = sameWords(from.notebook, next.notebook) ? entry : searchedOf(next.notebook)
      await writing
        .objectStore('notebooks')
        .put({ ...entry, id, name, place: searched.place, words: searched.words, changed: now(), head, snapshot })
      return undefined
    })
    if (refused === undefined) held.set(id, { notebook: next.notebook, head, since })
    return refused
  }

  /** Whether these edits begin a stretch of work, so that what stands now is worth going back to. */
  function beginsAnew({ since }: Held, changed: number, edits: readonly Edit[]): boolean {
    if (since === null || now() - changed >= PAUSE || now() - since >= LONGEST) return true
    return edits.some(({ type }) => type === 'go_back')
  }

  async function load(id: string): Promise<Notebook | Problem> {
    const found = await read(id)
    if (isProblem(found)) return found
    held.set(id, found)
    return found.notebook
  }

  async function copy(id: string, name: string): Promise<Notebook | Problem> {
    const found = await read(id)
    if (isProblem(found)) return found
    const notebook = copyNotebook(found.notebook, name)
    return (await create(notebook, false)) ?? notebook
  }

  async function rename(id: string, name: string): Promise<undefined | Problem> {
    const found = await load(id)
    return isProblem(found) ? found : append(id, [{ type: 'change_notebook', set: { name } }])
  }

  async function remove(id: string): Promise<undefined | Problem> {
    held.delete(id)
    return strictly(database, STORES, async (writing) => {
      await Promise.all([
        writing.objectStore('notebooks').delete(id),
        writing.objectStore('log').delete(keysOf(id)),
        writing.objectStore('snapshots').delete(keysOf(id)),
        writing.objectStore('states').delete(keysOf(id)),
      ])
      return undefined
    })
  }

  return {
    list: () => inTurn(() => entriesIn(database)),
    create: (notebook, proven = false) => inTurn(() => create(notebook, proven)),
    load: (id) => inTurn(() => load(id)),
    append: (id, edits) => inTurn(() => append(id, edits)),
    copy: (id, name) => inTurn(() => copy(id, name)),
    rename: (id, name) => inTurn(() => rename(id, name)),
    remove: (id) => inTurn(() => remove(id)),
    states: (id) => inTurn(() => statesOf(database, id)),
    state: (id, seq) => inTurn(() => stateOf(database, id, seq)),
    readable: (id) =>
      inTurn(async () => {
        const [{ readableOf }, { entry, snapshots, log }] = await Promise.all([
          import('./replay'),
          recordsOf(database, id),
        ])
        return entry === undefined ? problem('notebook_not_stored') : readableOf(entry, snapshots, log)
      }),
    raw: (id) => inTurn(async () => JSON.stringify(await recordsOf(database, id), null, 1)),
    close: () => database.close(),
  }
}

/** Why this text would not be read as a notebook again. */
async function unreadable(text: string, name: string): Promise<Problem | undefined> {
  const { fromFile } = await import('../notebook/file')
  const read = fromFile(text, name)
  return Array.isArray(read) ? read[0] : undefined
}
