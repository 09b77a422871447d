// The small face of Zod: a quarter of the size, and the page reads stored notebooks before it shows the first number.
import * as z from 'zod/mini'
import type { OwnRow } from '../worksheet/ownRow'
import { jsonFault } from '../worksheet/readJson'
import { LIMITS } from './limits'
import type { Cell, Chart, Notebook, Precision, Product, Reading, Sample, Scenario } from './notebook'
import { additionSchema, lessonSchema, planRecordSchema, remarkSchema } from './recordSchema'
import {
  amountSchema,
  basisSchema,
  dateSchema,
  idSchema,
  nameSchema,
  noteSchema,
  quantitySchema,
  record,
  unreserved,
  upTo,
  written,
} from './scalarSchema'

/** `acid_cap.ph_least`, `test_errors.ph`: whether there is such a value, and how far it may go, is the planner's to judge */
export const ruleKeySchema = written(/^[a-z][a-z0-9_]{0,63}\.[a-z][a-zA-Z0-9_]{0,63}$/)
export const orderSchema = upTo(LIMITS.order)
export const unitSchema = upTo(LIMITS.id)
export const profileSchema = z.enum(['metric', 'us'])
/** What it says is the worksheet loader's to judge; here it has to be data. */
export const worksheetSchema = z.unknown().check(z.refine((value) => jsonFault(value, LIMITS.depth) === null))
export const versionsSchema = record(upTo(LIMITS.id).check(unreserved), z.int().check(z.minimum(0)), LIMITS.entries)

const valueShape = {
  kind: z.literal('value'),
  entered: upTo(LIMITS.entered),
  unit: unitSchema,
  canonical: z.number(),
  method: z.exactOptional(upTo(LIMITS.entered)),
}
const choiceShape = { kind: z.literal('choice'), id: quantitySchema }
const limit = z.strictObject({
  kind: z.literal('limit'),
  side: z.enum(['above', 'below']),
  entered: upTo(LIMITS.entered),
  unit: unitSchema,
  canonical: z.number(),
  method: z.exactOptional(upTo(LIMITS.entered)),
})
const formula = z.strictObject({ kind: z.literal('formula'), text: upTo(LIMITS.formula) })
/** What may follow another scenario's plan; a reading of a sample follows nothing. */
const plan = { plan: z.exactOptional(idSchema) }

const reading: z.ZodMiniType<Reading> = z.discriminatedUnion('kind', [
  z.strictObject(valueShape),
  z.strictObject(choiceShape),
  limit,
])
export const cellSchema: z.ZodMiniType<Cell> = z.discriminatedUnion('kind', [
  z.strictObject({ ...valueShape, ...plan }),
  z.strictObject({ ...choiceShape, ...plan }),
  limit,
  formula,
  z.strictObject({ kind: z.literal('not_taken'), ...plan }),
])

export const sampleSchema: z.ZodMiniType<Sample> = z.strictObject({
  id: idSchema,
  name: nameSchema,
  date: dateSchema,
  elsewhere: z.boolean(),
  readings: record(quantitySchema, reading, LIMITS.entries),
  others: z.exactOptional(
    record(quantitySchema, z.array(reading).check(z.maxLength(LIMITS.replicates)), LIMITS.entries),
  ),
  origin: z.exactOptional(
    z.strictObject({
      file: upTo(LIMITS.note),
      row: z.int().check(z.minimum(1)),
      import: z.exactOptional(idSchema),
    }),
  ),
})

export const chosenCasesSchema = z.array(quantitySchema).check(z.maxLength(LIMITS.cases))

export const scenarioSchema: z.ZodMiniType<Scenario> = z.strictObject({
  id: idSchema,
  name: nameSchema,
  note: noteSchema,
  order: orderSchema,
  sample: z.nullable(idSchema),
  foretold: z.exactOptional(z.literal(true)),
  cases: z.exactOptional(chosenCasesSchema.check(z.minLength(1))),
})

export const productSchema: z.ZodMiniType<Product> = z.strictObject({
  id: idSchema,
  role: quantitySchema,
  product: quantitySchema,
  strength: z.exactOptional(amountSchema),
  basis: z.exactOptional(basisSchema),
  pack: z.exactOptional(amountSchema),
  price: z.exactOptional(z.number().check(z.minimum(0), z.maximum(1e9))),
})

const charted = {
  id: idSchema,
  name: nameSchema,
  outputs: z.array(quantitySchema).check(z.minLength(1), z.maxLength(LIMITS.outputs)),
  scenarios: z.array(idSchema).check(z.maxLength(LIMITS.scenarios)),
}

export const chartSchema: z.ZodMiniType<Chart> = z.discriminatedUnion('kind', [
  z.strictObject({
    ...charted,
    kind: z.literal('sweep'),
    input: quantitySchema,
    from: z.number(),
    to: z.number(),
    points: z.int().check(z.minimum(2), z.maximum(LIMITS.points)),
  }),
  z.strictObject({ ...charted, kind: z.literal('comparison') }),
])

export const precisionSchema: z.ZodMiniType<Precision> = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('method'), method: quantitySchema }),
  z.strictObject({
    kind: z.literal('value'),
    entered: upTo(LIMITS.entered),
    unit: unitSchema,
    canonical: z.number().check(z.minimum(0), z.maximum(1e9)),
  }),
])

/** A formula's text, name and unit are judged where the row stands; here they have to be short enough. */
export const ownRowSchema: z.ZodMiniType<OwnRow> = z.strictObject({
  id: idSchema,
  worksheet: quantitySchema,
  after: z.union([z.literal(''), quantitySchema]),
  order: orderSchema,
  row: z.strictObject({
    name: quantitySchema,
    label: z.exactOptional(nameSchema),
    help: z.exactOptional(noteSchema),
    unit: unitSchema,
    decimals: z.exactOptional(z.int().check(z.minimum(0), z.maximum(6))),
    range: z.exactOptional(z.tuple([z.number(), z.number()])),
    formula: upTo(LIMITS.formula),
    units_as_said: z.exactOptional(z.literal(true)),
  }),
})

/** The shape of a notebook; that its parts fit together is asked of `soundness`. */
export const notebookSchema: z.ZodMiniType<Notebook> = z.strictObject({
  format: z.literal('basinbook-notebook'),
  version: z.literal(3),
  id: idSchema,
  name: nameSchema,
  place: nameSchema,
  note: noteSchema,
  profile: profileSchema,
  units: record(quantitySchema, unitSchema, LIMITS.entries),
  scenarios: record(idSchema, scenarioSchema, LIMITS.scenarios),
  samples: record(idSchema, sampleSchema, LIMITS.samples),
  cells: record(written(/^[A-Za-z0-9_-]{1,64}\/[a-z][a-z0-9_]{0,63}$/), cellSchema, LIMITS.cells),
  shelf: record(idSchema, productSchema, LIMITS.products),
  charts: record(idSchema, chartSchema, LIMITS.charts),
  precisions: record(quantitySchema, precisionSchema, LIMITS.entries),
  worksheets: record(quantitySchema, worksheetSchema, LIMITS.worksheets),
  rows: record(idSchema, ownRowSchema, LIMITS.rows),
  plans: record(idSchema, planRecordSchema, LIMITS.plans),
  additions: record(idSchema, additionSchema, LIMITS.additions),
  remarks: record(idSchema, remarkSchema, LIMITS.additions),
  lessons: record(idSchema, lessonSchema, LIMITS.additions),
  cases: record(quantitySchema, worksheetSchema, LIMITS.cases),
  rules: record(ruleKeySchema, z.number(), LIMITS.entries),
  computedWith: versionsSchema,
})
