import { isProblem, type Problem, problem } from '../words/problem'
import { type Account, createLedger } from './account'
import { createColumnBuilder, type ImportedColumns } from './columnar'
import type { Known } from './known'
import type { RowOutcome } from './outcome'
import { REFUSED_HEADER, refusedLines } from './refusedCsv'
import { createSampleReader } from './rows'
import { HEAD_BYTES, sniff } from './sniff'
import type { Answers, Understanding } from './understanding'

/** What the page asks of the worker. */
export type IntakeRequest =
  | {
      readonly kind: 'understand'
      readonly id: number
      readonly file: Blob
      readonly known: readonly Known[]
      readonly answers: Answers
    }
  | { readonly kind: 'import'; readonly id: number; readonly file: Blob; readonly understanding: Understanding }
  | { readonly kind: 'cancel'; readonly id: number }

/** What the worker says; `id` is the request's. */
export type IntakeMessage =
  | { readonly kind: 'understood'; readonly id: number; readonly understanding: Understanding }
  | {
      readonly kind: 'progress'
      readonly id: number
      readonly bytes: number
      readonly total: number
      readonly rows: number
    }
  | { readonly kind: 'imported'; readonly id: number; readonly imported: Imported }
  /** nothing of the import is left */
  | { readonly kind: 'cancelled'; readonly id: number }
  | { readonly kind: 'failed'; readonly id: number; readonly problem: Problem }

export interface Imported {
  readonly columns: ImportedColumns
  readonly account: Account
  /** the first refused rows, to show */
  readonly refused: readonly Extract<RowOutcome, { kind: 'refused' }>[]
  /** all of them, as a CSV file to keep */
  readonly refusedCsv: string
  /** SHA-256 of the file, hexadecimal, by which a reading can be traced to the file it came from */
  readonly sha256: string
}

/** A part of the file is read at a time; between parts the worker hears a cancel. */
const PART = 262_144
const SHOWN = 500

export async function understand(file: Blob, known: readonly Known[], answers: Answers): Promise<Understanding> {
  const head = new Uint8Array(await file.slice(0, HEAD_BYTES).arrayBuffer())
  return sniff(head, known, answers, file.size <= HEAD_BYTES)
}

export interface Watch {
  progress(bytes: number, rows: number): void
  cancelled(): boolean
}

/** Reads a whole file into columns; null when it was cancelled on the way. A file with open questions is refused. */
export async function importFile(
  file: Blob,
  understanding: Understanding,
  watch: Watch,
): Promise<Imported | null | Problem> {
  const [open] = understanding.problems
  if (open !== undefined) return open
  if (understanding.questions.length > 0)
    return problem('lab_questions_open', [], { count: understanding.questions.length })
  const reader = createSampleReader(understanding)
  const builder = createColumnBuilder(understanding)
  const ledger = createLedger()
  const refused: Extract<RowOutcome, { kind: 'refused' }>[] = []
  const lines = [REFUSED_HEADER]

  function take(outcomes: readonly RowOutcome[]): void {
    for (const outcome of outcomes) {
      ledger.add(outcome)
      if (outcome.kind === 'sample') builder.add(outcome)
      if (outcome.kind !== 'refused') continue
      lines.push(refusedLines(outcome))
      if (refused.length < SHOWN) refused.push(outcome)
    }
  }

  for (let at = 0; at < file.size; at += PART) {
    if (watch.cancelled()) return null
    take(reader.push(new Uint8Array(await file.slice(at, at + PART).arrayBuffer())))
    watch.progress(Math.min(at + PART, file.size), reader.met())
  }
  take(reader.end())
  ledger.met(reader.met())
  const sha256 = await hash(file)
  if (watch.cancelled()) return null
  return { columns: builder.finish(), account: ledger.account(), refused, refusedCsv: lines.join(''), sha256 }
}

async function hash(file: Blob): Promise<string> {
  const digest = await crypto.subtle.digest('SHA-256', await file.arrayBuffer())
  return [...new Uint8Array(digest)].map((byte) => byte.toString(16).padStart(2, '0')).join('')
}

export type Post = (message: IntakeMessage, transfer?: ArrayBufferLike[]) => void

/** Answers requests; used by the worker, and by tests without one. */
export function createIntake(
  post: Post,
  transfer: (columns: ImportedColumns) => ArrayBufferLike[],
): (request: IntakeRequest) => Promise<void> {
  const cancelled = new Set<number>()
  return async (request) => {
    const { id } = request
    if (request.kind === 'cancel') {
      cancelled.add(id)
      return
    }
    try {
      if (request.kind === 'understand') {
        post({ kind: 'understood', id, understanding: await understand(request.file, request.known, request.answers) })
        return
      }
      const result = await importFile(request.file, request.understanding, {
        progress: (bytes, rows) => post({ kind: 'progress', id, bytes, total: request.file.size, rows }),
        cancelled: () => cancelled.has(id),
      })
      if (result === null) post({ kind: 'cancelled', id })
      else if (isProblem(result)) post({ kind: 'failed', id, problem: result })
      else post({ kind: 'imported', id, imported: result }, transfer(result.columns))
    } catch (error) {
      const why = error instanceof Error ? error.message : String(error)
      post({ kind: 'failed', id, problem: problem('lab_file_gone', [], { why }) })
    } finally {
      cancelled.delete(id)
    }
  }
}
