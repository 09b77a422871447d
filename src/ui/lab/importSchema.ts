import { z } from 'zod'
import { mappingSchema } from '../../intake/mapping'
import { type Problem, problem } from '../../words/problem'
import { isReservedKey } from '../../worksheet/readJson'

z.config({ jitless: true })

const count = z.int().min(0)
const short = z.string().max(1_000)
const key = short.refine((name) => !isReservedKey(name))

/** What else is said of a file does no harm. */
const headSchema = z.looseObject({
  id: z.string().regex(/^[A-Za-z0-9_-]{1,64}$/),
  name: z.string().min(1).max(1_000),
  size: z.number().min(0),
  sha256: z.string().regex(/^[0-9a-f]{0,64}$/),
  read: z.number().min(0).max(8.64e15),
  account: z.strictObject({
    rows: count,
    samples: count,
    refused: count,
    skipped: count,
    skippedBy: z.record(key, count),
    censored: count,
    unlikely: count,
    estimated: count,
    repeats: count,
  }),
  mapping: mappingSchema,
  headings: z.record(key, short),
  choices: z.record(key, z.array(short).max(1_000)),
})

const texts = z
  .strictObject({ bytes: z.instanceof(Uint8Array), ends: z.instanceof(Uint32Array) })
  .refine(({ bytes, ends }) => ends.every((end, at) => end >= (ends[at - 1] ?? 0) && end <= bytes.length))

const columnSchema = z.strictObject({
  quantity: z.string().min(1).max(64),
  values: z.instanceof(Float64Array),
  states: z.instanceof(Uint8Array),
  unit: z.string().max(64),
  decimals: z.instanceof(Uint8Array),
})

const bodySchema = z.looseObject({
  columns: z
    .strictObject({
      count,
      rows: z.instanceof(Int32Array),
      names: texts,
      dates: texts,
      quantities: z.array(columnSchema).max(5_000),
      notes: z.array(z.strictObject({ heading: short, texts })).max(5_000),
    })
    .refine(({ count: all, rows, names, dates, quantities, notes }) =>
      [
        rows,
        names.ends,
        dates.ends,
        ...quantities.flatMap(({ values, states, decimals }) => [values, states, decimals]),
        ...notes.map((note) => note.texts.ends),
      ].every(({ length }) => length === all),
    ),
  refusedCsv: z.string().max(200_000_000),
})

/** Why something that comes from outside is no lab file that was read in; null when it is one. */
export function importFault(head: unknown, body: unknown): Problem | null {
  const of = (read: z.ZodSafeParseResult<unknown>, code: string) => {
    const [issue] = read.error?.issues ?? []
    const path = issue?.path.map((step) => (typeof step === 'number' ? step : String(step))) ?? []
    return issue === undefined ? null : problem(code, path)
  }
  return of(headSchema.safeParse(head), 'lab_head_wrong') ?? of(bodySchema.safeParse(body), 'lab_columns_wrong')
}
