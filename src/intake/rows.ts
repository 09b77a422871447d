import { createDecoder } from './decode'
import { longReader } from './long'
import type { RowOutcome } from './outcome'
import { createCsvReader } from './records'
import type { RowReader } from './rowReader'
import { transposedReader } from './transposed'
import type { Understanding } from './understanding'
import { wideReader } from './wide'

/** Reads a file piece by piece: bytes or decoded text in, what became of each row out. */
export interface SampleReader {
  push(part: Uint8Array | string): readonly RowOutcome[]
  end(): readonly RowOutcome[]
  /** rows of data met so far */
  met(): number
}

const READERS: Readonly<Record<Understanding['shape'], (understanding: Understanding) => RowReader>> = {
  wide: wideReader,
  long: longReader,
  transposed: transposedReader,
}

/** The same code reads in a worker of the page and in Node. The understanding must have no problems and no questions. */
export function createSampleReader(understanding: Understanding): SampleReader {
  const decoder = createDecoder(understanding.encoding)
  const records = createCsvReader(understanding.delimiter)
  const reader = READERS[understanding.shape](understanding)
  return {
    push: (part) => reader.push(records.push(typeof part === 'string' ? part : decoder.push(part))),
    end: () => [...reader.push(records.push(decoder.end())), ...reader.push(records.end()), ...reader.end()],
    met: reader.met,
  }
}

/** Parts are read in pieces of this size, so that few samples are held at a time and a worker stays answerable. */
const PIECE = 16_384

/** What became of each row, in batches as the file's parts come in; returns how many rows of data were met. */
export async function* readSamples(
  parts: AsyncIterable<Uint8Array | string> | Iterable<Uint8Array | string>,
  understanding: Understanding,
): AsyncGenerator<readonly RowOutcome[], number> {
  const reader = createSampleReader(understanding)
  for await (const part of parts) {
    for (let at = 0; at < part.length; at += PIECE) {
      const outcomes = reader.push(
        typeof part === 'string' ? part.slice(at, at + PIECE) : part.subarray(at, at + PIECE),
      )
      if (outcomes.length > 0) yield outcomes
    }
  }
  yield reader.end()
  return reader.met()
}
