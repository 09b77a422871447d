import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { mappingSchema, readMapping } from '../../src/intake/mapping'
import { editSchema } from '../../src/notebook/editSchema'
import { fromFile } from '../../src/notebook/file'
import { notebookSchema } from '../../src/notebook/notebookSchema'
import { checked } from '../../src/notebook/schemaProblems'
import { checkBackup } from '../../src/storage/backup/checkBackup'
import { faultProblem } from '../../src/storage/backup/faultProblem'
import { recordSchema } from '../../src/storage/backup/record'
import { sha256 } from '../../src/storage/backup/sha256'
import { isProblem, type Problem } from '../../src/words/problem'
import { sentence } from '../../src/words/say'
import { definitionSchema } from '../../src/worksheet/definition'
import { parseDefinitionText } from '../../src/worksheet/parseDefinitionText'
import { fieldsOf, type Schema, valid } from './schema'
import { type Broken, broken } from './values'

const LONG = process.env.LONG !== undefined

interface Cases {
  readonly all: readonly Broken[]
  /** parts of the schema that were never broken */
  readonly missed: readonly Schema[]
}

/** Fields that are broken in one document, one at a time: making a document costs more than reading it. */
const EACH = 3
/** Rare fields may need more documents than were asked for; not many more. */
const MOST_ROUNDS = 20

/** Documents that a schema accepts, with one field broken, until every field was; those that were broken least come first. */
function cases(schema: Schema, count: number, elsewhere?: Schema): Cases {
  const times = new Map<Schema, number>()
  const seen = (part: Schema) => times.get(part) ?? 0
  const wanted = partsOf(schema)
  if (elsewhere) for (const part of partsOf(elsewhere)) wanted.delete(part)
  const all: Broken[] = []
  let missed = [...wanted]
  for (let round = 0; round < MOST_ROUNDS && (all.length < count || missed.length > 0); round++) {
    for (const document of fc.sample(valid(schema), { seed: 20260501 + round, numRuns: Math.ceil(count / EACH) })) {
      const fields = fieldsOf(schema, document).sort((a, b) => seen(a.schema) - seen(b.schema))
      for (const field of fields.slice(0, EACH)) {
        const one = broken(document, field, seen(field.schema) * 5 + times.size)
        times.set(field.schema, seen(field.schema) + 1)
        if (one !== null) all.push(one)
      }
    }
    missed = missed.filter((part) => !times.has(part))
  }
  return { all, missed }
}

/** Every part of a schema that can be wrong, by a walk over the schema alone. */
function partsOf(schema: Schema, found = new Set<Schema>()): Set<Schema> {
  if (found.has(schema)) return found
  const { type, shape, element, valueType, innerType, options, items } = schema._zod.def
  // anything may stand there: what it says is judged where it is read
  if (type !== 'unknown') found.add(schema)
  const inner = [...Object.values(shape ?? {}), element, valueType, ...(options ?? []), ...(items ?? [])]
  if (type !== 'optional' && type !== 'nullable' && type !== 'union')
    for (const part of inner) if (part !== undefined) partsOf(part, found)
  // what stands behind these is judged in their place; its own parts are looked at
  for (const part of [innerType, ...(type === 'union' ? (options ?? []) : [])])
    if (part !== undefined) {
      partsOf(part, found)
      found.delete(part)
    }
  return found
}

/** Refused: by a list of problems with sentences, one of them at the place or around it; and nothing was touched. */
function expectRefused(refused: unknown, { path, what }: Broken, file: string): void {
  const told = `${path.join('.')}: ${what}`
  expect(Array.isArray(refused), told).toBe(true)
  const problems = refused as Problem[]
  expect(problems.length, told).toBeGreaterThan(0)
  for (const one of problems) expect(sentence(one), told).toMatch(/\S.{5,}/)
  for (const one of problems) expect(one.path[0], told).toBe(file)
  const near = problems.some(({ path: [, ...at] }) => path.every((step, i) => i >= at.length || at[i] === step))
  expect(near, `${told} / ${problems.map(sentence).join(' | ')}`).toBe(true)
  expect(({} as Record<string, unknown>).polluted).toBeUndefined()
}

const KINDS: readonly {
  readonly name: string
  readonly schema: Schema
  readonly count: number
  readonly read: (json: unknown) => unknown
  /** a schema within this one whose every field is tried by itself */
  readonly elsewhere?: Schema
}[] = [
  {
    name: 'a notebook',
    schema: notebookSchema as unknown as Schema,
    count: 450,
    read: (json) => fromFile(JSON.stringify(json), 'it'),
  },
  {
    name: 'a worksheet definition',
    schema: definitionSchema as unknown as Schema,
    count: 250,
    read: (json) => parseDefinitionText(JSON.stringify(json), 'it'),
  },
  {
    name: 'an edit of the stored log',
    schema: editSchema as unknown as Schema,
    count: 250,
    read: (json) => checked(editSchema, json, ['it']),
    elsewhere: notebookSchema as unknown as Schema,
  },
  {
    name: 'a mapping',
    schema: mappingSchema as unknown as Schema,
    count: 50,
    read: (json) => readMapping(JSON.stringify(json), 'it'),
  },
]

describe('a file with a field that cannot be is refused with its place and reason', () => {
  test.each(KINDS)(
    '$name, every field of it',
    ({ schema, count, read, elsewhere }) => {
      const { all, missed } = cases(schema, LONG ? count * 10 : count, elsewhere)
      expect(all.length).toBeGreaterThanOrEqual(count)
      expect(missed.map((part) => part._zod.def.type)).toEqual([])
      for (const one of all) {
        // of no format any more, which is told before anything is looked at
        const whole = one.path.length === 0 || one.path[0] === 'format' || one.path[0] === 'version'
        expectRefused(read(one.document), whole ? { ...one, path: [] } : one, 'it')
      }
    },
    600_000,
  )

  test.each(KINDS)('$name has no text and no list without a most', ({ schema }) => {
    const parts = [...partsOf(schema)].map((part) => part._zod.def)
    const bounded = (def: (typeof parts)[number], kinds: readonly string[]) =>
      def.checks?.some(({ _zod: { def: check } }) => kinds.includes(check.check)) ?? false
    // a pattern that ends bounds a text too; what a record may hold is bounded by a check of its own
    const texts = parts.filter(({ type }) => type === 'string')
    expect(texts.filter((def) => !bounded(def, ['max_length', 'string_format']))).toEqual([])
    const long = new Set([...partsOf(schema)].filter((part) => part.safeParse('a'.repeat(200_000)).success))
    expect([...long].map((part) => part._zod.def.type)).toEqual([])
    expect(parts.filter((def) => def.type === 'array' && !bounded(def, ['max_length']))).toEqual([])
  })

  test('a record of a backup, with the right hashes', async () => {
    const stop = new AbortController().signal
    const judges = { lab: () => null, mapping: () => null }
    const schema = recordSchema as unknown as Schema
    const { all } = cases(schema, LONG ? 1_000 : 100)
    for (const one of all) {
      const header = { kind: 'header', format: 'basinbook-backup', version: 1, made: 1, states: true }
      const lines = await Promise.all(
        [header, one.document].map(
          async (record) => `${await sha256(JSON.stringify(record))} ${JSON.stringify(record)}\n`,
        ),
      )
      const packed = new Blob(lines).stream().pipeThrough(new CompressionStream('gzip'))
      const found = await checkBackup(await new Response(packed).blob(), 'it', judges, { at: () => undefined, stop })
      if (isProblem(found)) throw new Error(found.code)
      const words = found.faults.map((fault) => sentence(faultProblem(fault, 'it')))
      expect(
        words.some((text) => text.startsWith('it: record 2 cannot be taken in.')),
        `${one.what}: ${words}`,
      ).toBe(true)
    }
  }, 600_000)
})
