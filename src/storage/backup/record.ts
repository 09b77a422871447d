import * as z from 'zod/mini'
import { idSchema as id } from '../../notebook/scalarSchema'

z.config({ jitless: true })

/** Characters of one record: a notebook file's most, and what JSON adds to it. */
export const MOST_CHARACTERS = 300_000_000
/** Nesting of its JSON: columns of a lab file stand a few levels deep. */
export const MOST_DEPTH = 40

const time = z.number().check(z.minimum(0), z.maximum(8.64e15))
const count = z.int().check(z.minimum(0))
const name = z.string().check(z.minLength(1), z.maxLength(1_000))
const text = z.string().check(z.maxLength(MOST_CHARACTERS))

/**
 * What stands in a backup, one record a line. The first is the header, the last the end; the states of a notebook and the
 * pieces of a lab file follow it.
 */
export const recordSchema = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('header'),
    format: z.literal('basinbook-backup'),
    version: z.literal(1),
    /** when it was made, milliseconds since 1970 */
    made: time,
    /** whether earlier states are in it */
    states: z.boolean(),
  }),
  /** `text` is a notebook file */
  z.strictObject({ kind: z.literal('notebook'), id, name, changed: time, head: count, text }),
  z.strictObject({ kind: z.literal('state'), notebook: id, seq: count, at: time, text }),
  /** a notebook that could not be read when the backup was made: all that was stored of it */
  z.strictObject({ kind: z.literal('damaged'), id, name, text }),
  z.strictObject({ kind: z.literal('mapping'), name, kept: time, text }),
  /** `body` with typed arrays packed */
  z.strictObject({ kind: z.literal('import'), id, kept: time, head: z.unknown(), body: z.unknown(), files: count }),
  /** a piece of the file that an import was read from */
  z.strictObject({ kind: z.literal('file'), import: id, part: count, base64: text }),
  /** how many records came before, and the SHA-256 of all their hashes, one after another */
  z.strictObject({ kind: z.literal('end'), records: count, sha256: z.string().check(z.regex(/^[0-9a-f]{64}$/)) }),
])

export type BackupRecord = z.infer<typeof recordSchema>
export type RecordOf<K extends BackupRecord['kind']> = Extract<BackupRecord, { readonly kind: K }>
