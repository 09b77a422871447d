import * as z from 'zod/mini'
import type { Edit, SimpleEdit } from './edit'
import { LIMITS } from './limits'
import {
  cellSchema,
  chartSchema,
  chosenCasesSchema,
  notebookSchema,
  orderSchema,
  ownRowSchema,
  precisionSchema,
  productSchema,
  profileSchema,
  ruleKeySchema,
  sampleSchema,
  scenarioSchema,
  unitSchema,
  versionsSchema,
  worksheetSchema,
} from './notebookSchema'
import { additionSchema, lessonSchema, planRecordSchema, remarkSchema } from './recordSchema'
import { idSchema, nameSchema, noteSchema, quantitySchema } from './scalarSchema'

const simple = [
  z.strictObject({
    type: z.literal('set_cell'),
    scenario: idSchema,
    quantity: quantitySchema,
    cell: z.nullable(cellSchema),
  }),
  z.strictObject({
    type: z.literal('add_scenario'),
    scenario: scenarioSchema,
    cells: z.record(quantitySchema, cellSchema),
  }),
  z.strictObject({ type: z.literal('remove_scenario'), scenario: idSchema }),
  z.strictObject({
    type: z.literal('change_scenario'),
    scenario: idSchema,
    set: z.strictObject({
      name: z.exactOptional(nameSchema),
      note: z.exactOptional(noteSchema),
      order: z.exactOptional(orderSchema),
      sample: z.exactOptional(z.nullable(idSchema)),
      cases: z.exactOptional(chosenCasesSchema),
    }),
  }),
  z.strictObject({ type: z.literal('put_sample'), sample: sampleSchema }),
  z.strictObject({ type: z.literal('remove_sample'), sample: idSchema }),
  z.strictObject({
    type: z.literal('change_notebook'),
    set: z.strictObject({
      name: z.exactOptional(nameSchema),
      place: z.exactOptional(nameSchema),
      note: z.exactOptional(noteSchema),
      profile: z.exactOptional(profileSchema),
    }),
  }),
  z.strictObject({ type: z.literal('set_unit'), quantity: quantitySchema, unit: z.nullable(unitSchema) }),
  z.strictObject({ type: z.literal('put_product'), product: productSchema }),
  z.strictObject({ type: z.literal('remove_product'), product: idSchema }),
  z.strictObject({ type: z.literal('put_chart'), chart: chartSchema }),
  z.strictObject({ type: z.literal('remove_chart'), chart: idSchema }),
  z.strictObject({
    type: z.literal('set_precision'),
    quantity: quantitySchema,
    precision: z.nullable(precisionSchema),
  }),
  z.strictObject({
    type: z.literal('put_worksheet'),
    id: quantitySchema,
    definition: worksheetSchema,
    before: z.exactOptional(quantitySchema),
  }),
  z.strictObject({ type: z.literal('remove_worksheet'), id: quantitySchema }),
  z.strictObject({ type: z.literal('put_row'), row: ownRowSchema }),
  z.strictObject({ type: z.literal('remove_row'), row: idSchema }),
  z.strictObject({ type: z.literal('put_plan_record'), plan: planRecordSchema }),
  z.strictObject({ type: z.literal('remove_plan_record'), plan: idSchema }),
  z.strictObject({ type: z.literal('put_addition'), addition: additionSchema }),
  z.strictObject({ type: z.literal('remove_addition'), addition: idSchema }),
  z.strictObject({ type: z.literal('put_remark'), remark: remarkSchema }),
  z.strictObject({ type: z.literal('remove_remark'), remark: idSchema }),
  z.strictObject({ type: z.literal('put_lesson'), lesson: lessonSchema }),
  z.strictObject({ type: z.literal('remove_lesson'), lesson: idSchema }),
  z.strictObject({ type: z.literal('put_case'), id: quantitySchema, definition: worksheetSchema }),
  z.strictObject({ type: z.literal('remove_case'), id: quantitySchema }),
  z.strictObject({ type: z.literal('set_rule'), rule: ruleKeySchema, value: z.nullable(z.number()) }),
  z.strictObject({ type: z.literal('computed_with'), versions: versionsSchema }),
  z.strictObject({ type: z.literal('go_back'), to: notebookSchema }),
] as const

const simpleEdit: z.ZodMiniType<SimpleEdit> = z.discriminatedUnion('type', simple)

const togetherEdit = z.strictObject({
  type: z.literal('together'),
  edits: z.array(simpleEdit).check(z.maxLength(LIMITS.together)),
  of_itself: z.exactOptional(z.literal(true)),
})

/** The closed union of edits as data from outside: stored logs, other tabs. */
export const editSchema: z.ZodMiniType<Edit> = z.discriminatedUnion('type', [...simple, togetherEdit])
