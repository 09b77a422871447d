import * as z from 'zod/mini'
import type { Value } from '../functions/define'
import { LIMITS } from './limits'
import type { Addition, GivenStep, Lesson, PlanRecord, Remark } from './record'
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
} from './scalarSchema'

const unit = z.enum(['kg', 'L', 'm³'])
const figure = z.number()
const hours = z.number().check(z.minimum(0), z.maximum(1e6))
const value: z.ZodMiniType<Value> = z.union([figure, nameSchema, z.boolean()])
const waterSchema = record(quantitySchema, value, LIMITS.entries)
const several = <T extends z.ZodMiniType>(one: T) => z.array(one).check(z.maxLength(LIMITS.steps))
const sentences = several(noteSchema)
const known = { strength: z.exactOptional(amountSchema), basis: z.exactOptional(basisSchema) }

export const additionSchema: z.ZodMiniType<Addition> = z.strictObject({
  id: idSchema,
  date: dateSchema,
  product: quantitySchema,
  amount: amountSchema,
  unit,
  ...known,
  plan: z.exactOptional(idSchema),
  step: z.exactOptional(z.int().check(z.minimum(0), z.maximum(LIMITS.steps))),
  note: noteSchema,
})

const stepSchema: z.ZodMiniType<GivenStep> = z.strictObject({
  kind: quantitySchema,
  says: noteSchema,
  how: sentences,
  cautions: sentences,
  product: z.exactOptional(quantitySchema),
  amount: z.exactOptional(z.strictObject({ value: z.number().check(z.minimum(0), z.maximum(1e9)), unit })),
  ...known,
  at: hours,
  wait: hours,
  retest: several(quantitySchema),
  rules: several(nameSchema),
  water: waterSchema,
  lsi: z.exactOptional(figure),
})

export const planRecordSchema: z.ZodMiniType<PlanRecord> = z.strictObject({
  id: idSchema,
  date: dateSchema,
  scenario: nameSchema,
  sample: z.nullable(idSchema),
  swim: z.strictObject({ now: z.enum(['no', 'yes']), says: sentences }),
  steps: several(stepSchema),
  verdicts: several(z.strictObject({ quantity: quantitySchema, verdict: quantitySchema, says: noteSchema })),
  complete: z.boolean(),
  water: waterSchema,
  end: waterSchema,
  lsi: z.exactOptional(figure),
  versions: record(upTo(LIMITS.id).check(unreserved), z.int().check(z.minimum(0)), LIMITS.entries),
})

export const remarkSchema: z.ZodMiniType<Remark> = z.strictObject({
  id: idSchema,
  date: dateSchema,
  text: noteSchema,
})

export const lessonSchema: z.ZodMiniType<Lesson> = z.strictObject({
  id: idSchema,
  date: dateSchema,
  kind: z.enum(['volume', 'night', 'salt_display']),
  values: record(quantitySchema, figure, LIMITS.entries),
  from: several(idSchema),
  note: noteSchema,
})
