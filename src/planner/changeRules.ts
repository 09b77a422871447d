import { type Problem, problem } from '../words/problem'
import { type PlanRules, RULES } from './rules'

/** Values of a reader's copy of the rules, by `<rule>.<value>` or `test_errors.<quantity>`. */
export type RuleChanges = Readonly<Record<string, number>>

export interface ChangedRules {
  readonly rules: PlanRules
  /** changes that do not hold: no such value, or past its bounds */
  readonly refused: readonly Problem[]
}

/** One value of the rules that a reader may change. */
export interface RuleValue {
  /** `<rule>.<value>` or `test_errors.<quantity>` */
  readonly key: string
  readonly rule: string
  readonly name: string
  readonly value: number
  readonly least: number
  readonly most: number
  readonly unit: string
}

/** A test may be this many times better or worse than the shipped error says. Ours. */
const SPREAD = 4

const TEST_ERRORS = 'test_errors'

/** Every value that may be changed, as shipped; those that leave no room are not among them. */
export function changeable(rules: PlanRules = RULES): readonly RuleValue[] {
  const ofRules = [...rules.rules.values()].flatMap(({ id, values, bounds, units }) =>
    Object.entries(values).flatMap(([name, value]): RuleValue[] => {
      const [least, most] = bounds[name] ?? [value, value]
      return least < most
        ? [{ key: `${id}.${name}`, rule: id, name, value, least, most, unit: units[name] ?? '1' }]
        : []
    }),
  )
  const ofTests = [...rules.testErrors].map(([name, value]) => ({
    key: `${TEST_ERRORS}.${name}`,
    rule: TEST_ERRORS,
    name,
    value,
    least: value / SPREAD,
    most: value * SPREAD,
    unit: '',
  }))
  return [...ofRules, ...ofTests]
}

/** The shipped rules with a reader's values; a value past its bounds is refused and the shipped one holds. */
export function changeRules(changes: RuleChanges, shipped: PlanRules = RULES): ChangedRules {
  const known = new Map(changeable(shipped).map((value) => [value.key, value]))
  const rules = new Map(shipped.rules)
  const testErrors = new Map(shipped.testErrors)
  const refused: Problem[] = []
  for (const [key, value] of Object.entries(changes)) {
    const of = known.get(key)
    if (!of) refused.push(problem('rule_not_known', [key]))
    else if (!(value >= of.least && value <= of.most)) {
      refused.push(problem('rule_outside', [key], { found: value, least: of.least, most: of.most }))
    } else if (of.rule === TEST_ERRORS) testErrors.set(of.name, value)
    else {
      const rule = rules.get(of.rule)
      if (rule) rules.set(of.rule, { ...rule, values: { ...rule.values, [of.name]: value } })
    }
  }
  return { rules: { ...shipped, rules, testErrors }, refused }
}
