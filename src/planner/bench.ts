import type { Value } from '../functions/define'
import type { Problem } from '../words/problem'
import type { Catalog } from '../worksheet/catalog'

/** A water and what is known about its pool: contract names and canonical values. What is not in it was not taken. */
export type Column = ReadonlyMap<string, Value>

/** What the worksheets say of one quantity. */
export type Answer =
  | { readonly value: Value; readonly notices: readonly string[] }
  | { readonly problem: Problem; readonly notices: readonly string[] }

/** The answers for one water, by quantity. */
export interface Answers {
  readonly get: (quantity: string) => Answer | undefined
}

/** Where the planner has its waters worked out: it decides, the worksheets compute. */
export interface Bench {
  readonly catalog: Catalog
  /** the answers for the wanted quantities (one of `READ`), column by column */
  readonly evaluate: (columns: readonly Column[], wanted: readonly string[]) => readonly Answers[]
}

/** Readings that a step changes, and the quantity that foretells each. */
export const FORETOLD = {
  ph: 'step_ph',
  total_alkalinity: 'step_total_alkalinity',
  calcium_hardness: 'step_calcium_hardness',
  cyanuric_acid: 'step_cyanuric_acid',
  borate: 'step_borate',
  salt: 'step_salt',
  free_chlorine: 'step_free_chlorine',
} as const
export type Foretold = keyof typeof FORETOLD

/** The same for water that was drained and filled up. */
export const DILUTED: Readonly<Record<Foretold | 'tds' | 'total_chlorine', string>> = {
  ph: 'ph_after_dilution',
  total_alkalinity: 'total_alkalinity_after_dilution',
  calcium_hardness: 'calcium_hardness_after_dilution',
  cyanuric_acid: 'cyanuric_acid_after_dilution',
  borate: 'drain_borate',
  salt: 'salt_after_dilution',
  free_chlorine: 'drain_free_chlorine',
  tds: 'tds_after_dilution',
  total_chlorine: 'drain_total_chlorine',
}

/** What the planner reads, in groups that are worked out together; a group costs nothing where nothing of it is asked. */
export const READ: readonly (readonly string[])[] = [
  ['volume', 'volume_low', 'volume_high', 'turnover_time'],
  ['salt_used', 'salt_disagreement', 'target_salt_used', 'combined_chlorine', 'breakpoint_free_chlorine'],
  ['tds_used'],
  ['ph_against_air'],
  ['free_chlorine_for_target_hocl'],
  ['step_lsi', ...Object.values(FORETOLD)],
  ['drain_fraction'],
  ['drain_depth', 'drain_time', 'fill_time', 'iron_after_dilution', ...Object.values(DILUTED)],
  [
    ...['acid_equivalents', 'acid_volume', 'acid_mass', 'bicarbonate_mass', 'soda_ash_mass', 'caustic_mass'],
    ...['borate_mass', 'aeration_needed', 'ph_after', 'total_alkalinity_after'],
  ],
  ['calcium_product_mass'],
  ['cyanuric_acid_mass'],
  ['salt_mass'],
  ['chlorine_product_mass', 'chlorine_product_volume', 'chlorine_strength_used'],
  ['neutralizer_mass'],
  ['generator_hours', 'cell_may_run', 'minimum_cell_flow_used'],
]

const groupOf = new Map(READ.flatMap((group) => group.map((name) => [name, group] as const)))

/** The answers for some waters, each group of quantities worked out for all of them when it is first asked for. */
export function workedOut(bench: Bench, columns: readonly Column[]): readonly Answers[] {
  const done = new Map<readonly string[], readonly Answers[]>()
  const answersOf = (group: readonly string[]) => {
    const known = done.get(group) ?? bench.evaluate(columns, group)
    done.set(group, known)
    return known
  }
  return columns.map((_, i) => ({
    get: (quantity) => {
      const group = groupOf.get(quantity)
      return group && answersOf(group)[i]?.get(quantity)
    },
  }))
}
