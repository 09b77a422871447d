import { apply } from '../notebook/apply'
import { editSchema } from '../notebook/editSchema'
import { fromFile } from '../notebook/file'
import { migrate } from '../notebook/migrations/migrate'
import type { Notebook } from '../notebook/notebook'
import { checked } from '../notebook/schemaProblems'
import { isProblem, type Problem, problem } from '../words/problem'
import type { Entry, LogRecord, Snapshot } from './records'

/**
 * The notebook from its latest snapshot that can be read and the edits since then. Two snapshots are kept, with all
 * edits after the earlier one, so that one damaged snapshot costs nothing; where an edit is damaged or missing there is
 * no notebook, but a problem that says where, and the records themselves can still be exported.
 */
export function replay(entry: Entry, snapshots: readonly Snapshot[], log: readonly LogRecord[]): Notebook | Problem {
  let damage: Problem = problem('stored_no_snapshot', [entry.name])
  for (const snapshot of [...snapshots].sort((a, b) => b.seq - a.seq)) {
    const notebook = fromFile(snapshot.text, entry.name)
    if (Array.isArray(notebook)) damage = notebook.find(({ code }) => code === 'file_newer') ?? damage
    else {
      const current = follow(notebook, entry, snapshot.seq, log)
      if (!isProblem(current)) return current
      damage = current
    }
  }
  return damage
}

/** As much of a damaged notebook as can be read, and how much of it that is. */
export interface Readable {
  readonly notebook: Notebook
  /** the last edit that is in it, and the last that was kept */
  readonly seq: number
  readonly head: number
}

/** The notebook up to the first edit that cannot be read, from whichever snapshot leads furthest. */
export function readableOf(
  entry: Entry,
  snapshots: readonly Snapshot[],
  log: readonly LogRecord[],
): Readable | Problem {
  let best: Readable | null = null
  for (const snapshot of snapshots) {
    const notebook = fromFile(snapshot.text, entry.name)
    if (Array.isArray(notebook)) continue
    const { notebook: reached, seq } = advance(notebook, entry, snapshot.seq, log)
    if (best === null || seq > best.seq) best = { notebook: reached, seq, head: entry.head }
  }
  return best ?? problem('stored_no_snapshot', [entry.name])
}

function follow(start: Notebook, entry: Entry, after: number, log: readonly LogRecord[]): Notebook | Problem {
  const { notebook, damage } = advance(start, entry, after, log)
  return damage ?? notebook
}

/** As far as the edits can be followed, and what stopped it. */
function advance(
  start: Notebook,
  entry: Entry,
  after: number,
  log: readonly LogRecord[],
): { readonly notebook: Notebook; readonly seq: number; readonly damage: Problem | null } {
  let notebook = start
  const records = new Map(log.map((record) => [record.seq, record]))
  for (let seq = after + 1; seq <= entry.head; seq++) {
    const stopped = (damage: Problem) => ({ notebook, seq: seq - 1, damage })
    const record = records.get(seq)
    if (record === undefined) return stopped(problem('stored_edit_missing', [entry.name], { seq, head: entry.head }))
    const next = step(notebook, record, entry.name)
    if (isProblem(next))
      return stopped(
        next.code === 'file_newer' ? next : problem('stored_edit_damaged', [entry.name], { seq, head: entry.head }),
      )
    notebook = next
  }
  return { notebook, seq: entry.head, damage: null }
}

function step(notebook: Notebook, record: LogRecord, name: string): Notebook | Problem {
  const migrated = migrate('edit', record.edit, record.format, [name])
  if (isProblem(migrated)) return migrated
  const edit = checked(editSchema, migrated.today, [name])
  if (Array.isArray(edit)) return problem('stored_edit_damaged', [name])
  const applied = apply(notebook, edit.value)
  return isProblem(applied) ? applied : applied.notebook
}
