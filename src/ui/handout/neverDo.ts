import type { Plan, Step } from '../../planner/step'
import { waitsForFill } from './findings'

/** Two of them are read; ten are not. */
const MOST = 2

const CHLORINE = new Set(['sodium_hypochlorite', 'calcium_hypochlorite', 'dichlor', 'trichlor'])
const ACID = new Set(['hydrochloric_acid', 'sulfuric_acid', 'sodium_bisulfate'])
const CARBONATE = new Set(['sodium_bicarbonate', 'sodium_carbonate'])
const CALCIUM = new Set(['calcium_chloride', 'calcium_chloride_dihydrate'])

/** What must not be done with this water, by key of the catalogue; the gravest first. */
export function neverDo(plan: Plan): readonly string[] {
  const says = (...keys: readonly string[]) => plan.steps.some((step) => keys.includes(step.says.key))
  const doses = (products: ReadonlySet<string>) => plan.steps.some((step) => isDoseOf(step, products))
  const verdict = (quantity: string, ...keys: readonly string[]) =>
    plan.verdicts.some(
      ({ quantity: of, reason }) => of === quantity && (keys.includes(reason.key) || waitsForFill(reason)),
    )
  const cases: readonly (readonly [string, boolean])[] = [
    ['no_flow', says('plan.gate.no_flow', 'plan.gate.dirty_filter', 'plan.gate.low_water')],
    ['bleached', says('plan.gate.bleached_test')],
    ['high_chlorine', says('plan.gate.high_chlorine')],
    ['fresh_plaster', says('plan.gate.fresh_plaster')],
    ['salt_alarm', says('plan.retest.salt_apart', 'plan.retest.salt_alarm')],
    ['mix', doses(ACID) && doses(CHLORINE)],
    [
      'stabilizer',
      verdict('cyanuric_acid', 'plan.verdict.over', 'plan.verdict.over_ratio', 'plan.verdict.stabilizer_high'),
    ],
    ['salt_high', verdict('salt', 'plan.verdict.salt_high', 'plan.verdict.over')],
    ['drain', plan.steps.some(({ kind }) => kind === 'dilute')],
    ['salt_at_once', plan.steps.some(({ product, part }) => product === 'salt' && part === 1)],
    ['carbonate', doses(CARBONATE) && doses(CALCIUM)],
    ['more', true],
  ]
  return cases
    .filter(([, holds]) => holds)
    .slice(0, MOST)
    .map(([key]) => `handout.never.${key}`)
}

function isDoseOf({ kind, product }: Step, products: ReadonlySet<string>): boolean {
  return kind === 'dose' && product !== undefined && products.has(product)
}
