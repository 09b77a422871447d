import { z } from 'zod'
import { type Problem, problem } from '../words/problem'
import { answerFor } from './answerFor'
import type { Answers, Column, Understanding } from './understanding'

z.config({ jitless: true })

const LONGEST = 1_000_000

const columnSchema = z.strictObject({
  quantity: z.string().min(1).max(64).optional(),
  unit: z.string().min(1).max(60).optional(),
  role: z
    .enum([
      'sample',
      'place',
      'date',
      'time',
      'note',
      'status',
      'kind',
      'analyte',
      'fraction',
      'result',
      'result_text',
      'qualifier',
      'detection',
      'unit',
      'limit',
      'limit_unit',
    ])
    .optional(),
})

/** How one laboratory's files are to be read, kept under a name: the answers, and the headings by which they are recognised. */
export const mappingSchema = z.strictObject({
  format: z.literal('basinbook-mapping'),
  version: z.literal(1),
  name: z.string().max(200).optional(),
  /** headings of the file that it was made for, in order */
  headings: z.array(z.string().max(200)).max(5_000).optional(),
  delimiter: z.enum([',', ';', '\t', '|']).optional(),
  decimal: z.enum(['.', ',']).optional(),
  dates: z.enum(['dmy', 'mdy', 'ymd']).optional(),
  replicates: z.enum(['keep', 'first', 'last', 'mean']).optional(),
  columns: z.record(z.string().max(200), columnSchema).optional(),
})

export type Mapping = z.infer<typeof mappingSchema>

/** Reads a mapping file. Problems: `lab_mapping_unreadable`, or one `lab_mapping_wrong` for each place, with its path. */
export function readMapping(text: string, file: string): Mapping | readonly Problem[] {
  let json: unknown
  try {
    json = text.length > LONGEST ? undefined : JSON.parse(text)
  } catch {
    json = undefined
  }
  if (json === undefined) return [problem('lab_mapping_unreadable', [file])]
  const read = mappingSchema.safeParse(json)
  if (read.success) return read.data
  return read.error.issues.map((issue) => {
    const named = issue.code === 'unrecognized_keys' ? issue.keys : []
    const path = issue.path.map((step) => (typeof step === 'number' ? step : String(step)))
    return problem('lab_mapping_wrong', [file, ...path, ...named.slice(0, 1)])
  })
}

export function isMapping(read: Mapping | readonly Problem[]): read is Mapping {
  return !Array.isArray(read)
}

/** What a mapping answers. */
export function answersOf({ delimiter, decimal, dates, replicates, columns }: Mapping): Answers {
  const answers = { delimiter, decimal, dates, replicates, columns }
  return Object.fromEntries(Object.entries(answers).filter(([, value]) => value !== undefined)) as Answers
}

/** The mapping to keep for files like this one: what was answered and how each column was understood. */
export function mappingOf(understanding: Understanding, name: string): Mapping {
  const { delimiter, decimal, dates, answers, columns, analytes } = understanding
  return {
    format: 'basinbook-mapping',
    version: 1,
    name,
    headings: columns.map(({ heading }) => heading),
    delimiter: delimiter as Exclude<Mapping['delimiter'], undefined>,
    ...(decimal === null ? {} : { decimal }),
    ...(dates === null ? {} : { dates }),
    ...(answers.replicates === undefined ? {} : { replicates: answers.replicates }),
    columns: Object.fromEntries([
      ...columns.flatMap((column) => settledColumn(column)),
      ...analytes.filter(({ unitText }) => unitText !== null).flatMap((one) => statedColumn(one, answers)),
      // what rows without a unit were read in is what the next file's are to be read in
      ...analytes.filter(({ unitText }) => unitText === null).flatMap((one) => settledColumn(one)),
    ]),
  }
}

function settledColumn({ heading, role, quantity, unit }: Column): [string, z.infer<typeof columnSchema>][] {
  if (heading === '') return []
  if (role !== 'quantity') return [[heading, { role }]]
  if (quantity === null) return []
  return [[heading, unit === null || unit.times !== 1 ? { quantity } : { quantity, unit: unit.code }]]
}

/** A unit that stands in the rows is the rows' own, but for what was asked or told of it. */
function statedColumn(column: Column, answers: Answers): [string, z.infer<typeof columnSchema>][] {
  const answered = answerFor(answers, column.heading).unit
  if (answered !== undefined)
    return settledColumn(column).map(([heading, kept]) => [heading, { ...kept, unit: answered }])
  const told = column.why.some(({ code }) => code === 'among_ions')
  return settledColumn(told ? column : { ...column, unit: null })
}

/** The kept mapping that was made for a file with these headings, the last kept first. */
export function recognised<M extends Pick<Mapping, 'headings'>>(
  understanding: Understanding,
  kept: readonly M[],
): M | null {
  const headings = JSON.stringify(understanding.columns.map(({ heading }) => heading))
  return kept.findLast((mapping) => JSON.stringify(mapping.headings) === headings) ?? null
}
