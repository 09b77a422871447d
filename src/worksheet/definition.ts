import { z } from 'zod'
import { CHOICE_ID } from './choiceId'
import { QUANTITY_NAME } from './quantityName'

// Without this Zod compiles its checks from text, which a strict Content-Security-Policy forbids.
z.config({ jitless: true })

const name = z.string().regex(QUANTITY_NAME)
/** of a choice: like a name, but capitals may stand for themselves, as in g_per_L */
const choiceId = z.string().regex(CHOICE_ID)
const text = z.string().min(1).max(2_000)
const formula = z.string().min(1).max(4_000)
/** a kind and what it is about, without spaces, for notices are listed with spaces between them: `disagree:tds` */
const notice = z.string().regex(/^[a-z][a-z_]{0,39}:[a-z][a-z0-9_]{0,63}$/)
const few = 50

/** A span of a number quantity that a band holds for: from `from` up to, not including, `below`. */
const spanOf = z.strictObject({ from: z.number().optional(), below: z.number().optional() })

/** When a band applies: every named quantity of the scenario has one of these choices, or lies in this span. */
const when = z.record(name, z.union([z.array(choiceId).min(1).max(few), spanOf]))

/** The band that is drawn and spoken of; the first whose `when` holds is used. In the row's canonical unit. */
const band = z.strictObject({
  when: when.optional(),
  low: z.number().optional(),
  high: z.number().optional(),
  source: text,
})

const span = z.tuple([z.number(), z.number()])

const look = {
  name,
  /** left out in shipped definitions, where the catalogue has them by the row's name */
  label: text.optional(),
  help: text.optional(),
  unit: z.string().min(1).max(40),
  decimals: z.int().min(0).max(6).optional(),
  /** the span that the range bar shows */
  range: span.optional(),
  target: z.array(band).min(1).max(few).optional(),
  source: text.optional(),
  /** what may hurt people, pool or cell: `caution.<key>` of the catalogue, or the sentence itself; stands beside the row */
  cautions: z.array(text).max(few).optional(),
}

/**
 * Where its formula is true, there is no value but this reason: `<code>:<name>` with a sentence in the catalogue
 * (`problem.<code>.<name>`), or the sentence itself. Where the formula has no answer, it does not hold. It may not read
 * the row itself.
 */
const refusal = z.strictObject({ problem: z.string().min(1).max(200), when: formula })
const refusals = z.array(refusal).max(few).optional()

/** A number that a person enters: refused outside `accept`, questioned outside `plausible`. */
const numberInput = z.strictObject({
  ...look,
  input: z.literal('number'),
  accept: span,
  plausible: span.optional(),
  /** stands in the baseline until something else is entered; shown as such */
  default: z.number().optional(),
})

/** One of a closed list of ids; their labels come from the catalogue (`choice.<name>.<id>`). */
const choiceInput = z.strictObject({
  ...look,
  unit: z.literal('choice'),
  input: z.literal('choice'),
  choices: z.array(choiceId).min(2).max(few),
  /** of choices that the catalogue has no words for */
  labels: z.record(choiceId, text).optional(),
  default: choiceId.optional(),
})

/** A worked-out row. */
const computed = z.strictObject({
  ...look,
  formula,
  /** numbers in the formula carry units of their own, as in 7 days: the row's unit is taken as said and not checked */
  units_as_said: z.literal(true).optional(),
  /** a declared default: this row is its formula, but `value` where `<of>` was not taken, with the notice `assumed:<of>` */
  when_missing: z.strictObject({ of: name, value: z.number(), source: text }).optional(),
  /** the first that holds is told */
  refuses: refusals,
  /** each raises its notice where its formula is true; it may read the row itself */
  checks: z
    .array(z.strictObject({ notice, when: formula }))
    .max(few)
    .optional(),
})

export const rowSchema = z.union([numberInput, choiceInput, computed])

/** A row of this worksheet, or the name of one that is taken from another and shown here too. */
const group = z.strictObject({
  id: name,
  label: text.optional(),
  rows: z.array(z.union([name, rowSchema])).max(200),
  /** worked out for other pages, and not shown as rows */
  hidden: z.literal(true).optional(),
})

/** One locked function over input rows that fills a hidden block; formulas read `<id>.<output>`. */
const solve = z.strictObject({ id: name, function: z.string().min(1).max(64), inputs: z.record(name, name) })

/**
 * A set of ranges by one code, standard or practice. Where its id is chosen in the quantity `target_set`, its bands go before
 * the rows' own; what it says nothing of keeps the row's own. A copy with other values, under another id, is one more choice.
 */
export const targetSetSchema = z.strictObject({
  id: name,
  /** left out in shipped ones, where the catalogue has it */
  label: text.optional(),
  /** of a copy: the name of the set that it was copied from */
  from: text.optional(),
  /** of every band that names none itself */
  source: text,
  bands: z.record(
    name,
    z
      .array(band.partial({ source: true }))
      .min(1)
      .max(few),
  ),
})

/** A chart that comes with the worksheet: quantities against one number input, over a span in its canonical unit. */
const chart = z.strictObject({
  id: name,
  /** left out in shipped definitions, where the catalogue has `chart.<worksheet>.<id>` */
  label: text.optional(),
  input: name,
  from: z.number(),
  to: z.number(),
  outputs: z.array(name).min(1).max(12),
})

export const definitionSchema = z.strictObject({
  /** for editors that complete and check by a schema; not read */
  $schema: z.string().max(400).optional(),
  format: z.literal('basinbook-worksheet'),
  version: z.literal(1),
  id: name,
  /** goes up when any formula or default of a shipped definition changes */
  edition: z.int().min(1),
  label: text.optional(),
  help: text.optional(),
  /** quantities and solve outputs of other worksheets that this one shows or uses */
  takes: z.array(z.string().min(1).max(130)).max(500),
  solves: z.array(solve).max(20).optional(),
  /** hold for every worked-out row of this worksheet, before the row's own */
  refuses: refusals,
  /** sets of ranges that this definition brings; those of the app are in `worksheets/targets/` */
  targets: z.array(targetSetSchema).max(20).optional(),
  /** none where a definition brings nothing but sets of ranges */
  groups: z.array(group).max(few),
  charts: z.array(chart).max(20).optional(),
})

export type Definition = z.infer<typeof definitionSchema>
export type Row = z.infer<typeof rowSchema>
export type NumberRow = z.infer<typeof numberInput>
export type ChoiceRow = z.infer<typeof choiceInput>
export type ComputedRow = z.infer<typeof computed>
export type DefinedChart = z.infer<typeof chart>
export type Refusal = z.infer<typeof refusal>
export type TargetSet = z.infer<typeof targetSetSchema>
export type Band = z.infer<typeof band>
export type SolveDefinition = z.infer<typeof solve>
