import { z } from 'zod'
import { QUANTITY_NAME } from '../../worksheet/quantityName'

// Without this Zod compiles its checks from text, which a strict Content-Security-Policy forbids.
z.config({ jitless: true })

const name = z.string().regex(QUANTITY_NAME)
const text = z.string().min(1).max(2_000)
const formula = z.string().min(1).max(4_000)
const few = 50

/** Parts of the plan that a case can stop; `all` stops every one of them. */
export const STAGES = [
  'all',
  'dilution',
  'chlorine',
  'combined',
  'balance',
  'stabilizer',
  'calcium',
  'salt',
  'borate',
  'cell',
  'tablets',
] as const
const stops = z.array(z.enum(STAGES)).max(few)

/** A sentence of a case: shipped ones have it in the catalogue under `case.<case>.<id>`. */
const said = { id: name, says: text.optional() }

/** What the worksheets work out that is shown beside a step: values and amounts never stand in the case itself. */
const tells = z.array(name).max(few).optional()

/**
 * While its formula is true, or cannot be told for want of a reading, it stops these parts of the plan; with none it only
 * stands as a warning while it is true.
 */
const gate = z.strictObject({ ...said, when: formula, stops: stops.optional() })

const ownStep = z.strictObject({
  ...said,
  /** only while this is true; where it cannot be told, the step stands */
  when: formula.optional(),
  /** hours to wait after it */
  wait: z.number().min(0).max(10_000).optional(),
  /** quantities to test after it */
  retest: z.array(name).max(few).optional(),
  tells,
  pump: z.enum(['on', 'off']).optional(),
  cell: z.enum(['on', 'off']).optional(),
  /** `caution.<key>` of the catalogue, or the sentence itself */
  cautions: z.array(text).max(few).optional(),
})

/** Where the plan's own steps stand among those of the case; without it they come last. */
const planHere = z.strictObject({ plan: z.literal(true) })

export const caseSchema = z.strictObject({
  /** for editors that complete and check by a schema; not read */
  $schema: z.string().max(400).optional(),
  format: z.literal('basinbook-case'),
  version: z.literal(1),
  id: name,
  /** goes up when what it does changes */
  edition: z.int().min(1),
  label: text.optional(),
  help: text.optional(),
  /** why it is offered, as a sentence */
  because: text.optional(),
  sources: z
    .array(z.strictObject({ mark: z.enum(['published', 'computed', 'common_practice', 'from_memory']), says: text }))
    .min(1)
    .max(few),
  /** it is offered where this is true; without it the reader alone can choose it */
  when: formula.optional(),
  /** readings and observations that it needs and that nothing else tells */
  asks: z.array(name).max(few).optional(),
  /** parts of the plan that it stops; a case that stops something holds as soon as its condition does */
  stops: stops.optional(),
  /** nobody swims while it holds */
  closes: z.literal(true).optional(),
  /** pH and alkalinity come before chlorine while it holds */
  ph_first: z.literal(true).optional(),
  /** targets of the plan while it holds, each a formula over the reader's own */
  sets: z.record(name, formula).optional(),
  /** products that do not go in while it holds */
  bars: z.array(name).max(few).optional(),
  gates: z.array(gate).max(few).optional(),
  steps: z
    .array(z.union([ownStep, planHere]))
    .min(1)
    .max(few),
  /** what must be true at its end */
  done: z
    .array(z.strictObject({ ...said, when: formula }))
    .max(few)
    .optional(),
  /** what not to do */
  forbids: z.array(z.strictObject(said)).max(few).optional(),
})

export type CaseDefinition = z.infer<typeof caseSchema>
export type CaseStep = z.infer<typeof ownStep>
export type Stage = (typeof STAGES)[number]

/** A case and where it came from. */
export interface CaseSource {
  readonly definition: CaseDefinition
  /** what problems call it */
  readonly file: string
  readonly shipped: boolean
}
