import { checked } from '../../notebook/schemaProblems'
import { isProblem, type Problem, problem } from '../../words/problem'
import { readJson } from '../../worksheet/readJson'
import type { Progress } from './progress'
import { type BackupRecord, MOST_CHARACTERS, MOST_DEPTH, recordSchema } from './record'
import { sha256 } from './sha256'

/** A record of a backup, or why it is none, with its place: records are counted from 1. */
export type Read =
  | { readonly at: number; readonly record: BackupRecord }
  | { readonly at: number; readonly why: Problem }

const LINE = /^([0-9a-f]{64}) /

/**
 * The records of a backup file one by one, each held to its hash and to its shape. What cannot be unpacked or is no such file is
 * one problem at its place, and the last; a record that is not as it was written is a problem, and reading goes on.
 * @param most characters of one record: a small file can unpack to one that fills the memory
 */
export async function* readRecords(
  file: Blob,
  name: string,
  { at, stop }: Progress,
  most = MOST_CHARACTERS,
): AsyncGenerator<Read> {
  const hashes: string[] = []
  let counted = 0
  let ended = false
  try {
    for await (const line of linesOf(file, at, stop, most)) {
      counted++
      const read = await readLine(line, name)
      if (counted === 1 && (isProblem(read.result) || read.result.kind !== 'header')) {
        yield { at: 1, why: problem('backup_none', [name]) }
        return
      }
      if (ended) {
        yield { at: counted, why: problem('backup_after_end', [name]) }
        return
      }
      if (isProblem(read.result)) yield { at: counted, why: read.result }
      else if (read.result.kind === 'end') {
        ended = true
        const { records, sha256: all } = read.result
        if (records !== hashes.length || all !== (await sha256(hashes.join(''))))
          yield { at: counted, why: problem('backup_not_whole', [name], { records, found: hashes.length }) }
      } else yield { at: counted, record: read.result }
      hashes.push(read.hash)
    }
  } catch (error) {
    const why = stop.aborted ? problem('stopped') : tooLong(error) ? problem('backup_line_too_long', [name]) : null
    yield { at: counted + 1, why: why ?? problem((await isPacked(file)) ? 'backup_cut_off' : 'backup_none', [name]) }
    return
  }
  if (!ended) yield { at: counted + 1, why: problem(counted === 0 ? 'backup_none' : 'backup_cut_off', [name]) }
}

async function readLine(
  line: string,
  name: string,
): Promise<{ readonly hash: string; readonly result: BackupRecord | Problem }> {
  const [, hash] = LINE.exec(line) ?? []
  const text = line.slice(65)
  if (hash === undefined || (await sha256(text)) !== hash)
    return { hash: hash ?? '', result: problem('backup_changed', [name]) }
  const read = readJson(text, name, { characters: MOST_CHARACTERS, depth: MOST_DEPTH })
  if (isProblem(read)) return { hash, result: read }
  const shaped = checked(recordSchema, read.json, [name])
  return { hash, result: Array.isArray(shaped) ? (shaped[0] ?? problem('backup_changed', [name])) : shaped.value }
}

async function* linesOf(file: Blob, at: Progress['at'], stop: AbortSignal, most: number): AsyncGenerator<string> {
  let packedBytes = 0
  const counting = new TransformStream<Uint8Array<ArrayBuffer>, Uint8Array<ArrayBuffer>>({
    transform(chunk, controller) {
      packedBytes += chunk.length
      at(packedBytes / file.size)
      controller.enqueue(chunk)
    },
  })
  const reader = file
    .stream()
    .pipeThrough(counting)
    .pipeThrough(new DecompressionStream('gzip'))
    .pipeThrough(new TextDecoderStream('utf-8', { fatal: true }))
    .getReader()
  let begun: string[] = []
  let length = 0
  try {
    for (;;) {
      stop.throwIfAborted()
      const { value, done } = await reader.read()
      if (done) break
      const pieces = value.split('\n')
      for (const piece of pieces.slice(0, -1)) {
        yield begun.join('') + piece
        begun = []
        length = 0
      }
      const rest = pieces.at(-1) ?? ''
      begun.push(rest)
      length += rest.length
      if (length > most) throw new RangeError(TOO_LONG)
    }
  } finally {
    await reader.cancel().catch(() => undefined)
  }
  if (length > 0) yield begun.join('')
}

const TOO_LONG = 'the line is too long'

function tooLong(error: unknown): boolean {
  return error instanceof RangeError && error.message === TOO_LONG
}

/** Whether a file begins as gzip does (RFC 1952, section 2.3.1). */
async function isPacked(file: Blob): Promise<boolean> {
  const [first, second] = new Uint8Array(await file.slice(0, 2).arrayBuffer())
  return first === 0x1f && second === 0x8b
}
