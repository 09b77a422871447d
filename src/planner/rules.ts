import { isProblem, type Problem, problem } from '../words/problem'
import shipped from './rules.json'

/**
 * A rule of the plan. The sentence that gives its reason is `rule.<id>` in the catalogue; `basis` says where it comes from. A
 * rule that is not in the list does not hold.
 */
export interface Rule {
  readonly id: string
  readonly values: Readonly<Record<string, number>>
  readonly basis: string
}

/** What a plan respects: rules, the error of each test, and the steps in which an amount can be measured. */
export interface PlanRules {
  readonly rules: ReadonlyMap<string, Rule>
  /** by quantity, in its canonical unit */
  readonly testErrors: ReadonlyMap<string, number>
  /** by unit: under `below` (null: everything else) an amount is measured in steps of `step` */
  readonly measurable: Readonly<Record<'kg' | 'L', readonly MeasureStep[]>>
}
export type MeasureStep = readonly [below: number | null, step: number]

const FORMAT = 'basinbook-plan-rules'

/**
 * Rules from a file. A person may change values and test errors, or take rules out of a copy; ids and names of values are
 * those of the shipped rules.
 */
export function readRules(json: unknown, file = 'rules.json'): PlanRules | Problem {
  const wrong = (...path: (string | number)[]) => problem('plan_rules', [file, ...path])
  if (!isRecord(json) || json.format !== FORMAT || json.version !== 1) return wrong('format')
  if (!Array.isArray(json.rules)) return wrong('rules')
  const rules = new Map<string, Rule>()
  for (const [i, rule] of json.rules.entries()) {
    const read = readRule(rule)
    if (!read || rules.has(read.id)) return wrong('rules', i)
    rules.set(read.id, read)
  }
  const testErrors = new Map<string, number>()
  if (!isRecord(json.test_errors)) return wrong('test_errors')
  for (const [quantity, error] of Object.entries(json.test_errors)) {
    if (!isRecord(error) || !isAmount(error.value)) return wrong('test_errors', quantity)
    testErrors.set(quantity, error.value)
  }
  const kg = isRecord(json.measurable) ? readMeasure(json.measurable.kg) : null
  const L = isRecord(json.measurable) ? readMeasure(json.measurable.L) : null
  return kg && L ? { rules, testErrors, measurable: { kg, L } } : wrong('measurable')
}

function readRule(rule: unknown): Rule | null {
  if (!isRecord(rule) || typeof rule.id !== 'string' || typeof rule.basis !== 'string' || !isRecord(rule.values))
    return null
  const known = NAMES.get(rule.id)
  const values = Object.entries(rule.values)
  if (!known || values.length !== known.length) return null
  if (!values.every(([name, value]) => known.includes(name) && isAmount(value))) return null
  return { id: rule.id, values: rule.values as Rule['values'], basis: rule.basis }
}

function readMeasure(steps: unknown): readonly MeasureStep[] | null {
  if (!Array.isArray(steps)) return null
  const sound = steps.every(
    (step: unknown) =>
      Array.isArray(step) && step.length === 2 && (step[0] === null || isAmount(step[0])) && isAmount(step[1]),
  )
  return sound && steps.every(([, step]: MeasureStep) => step > 0) ? (steps as readonly MeasureStep[]) : null
}

function isAmount(value: unknown): value is number {
  return typeof value === 'number' && Number.isFinite(value) && value >= 0
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
}

const NAMES = new Map<string, readonly string[]>(shipped.rules.map(({ id, values }) => [id, Object.keys(values)]))

/** The rules that come with the app. */
export const RULES: PlanRules = sound(readRules(shipped))

function sound(rules: PlanRules | Problem): PlanRules {
  if (isProblem(rules)) throw new RangeError(`the shipped plan rules are not sound: ${rules.path.join('.')}`)
  return rules
}

/** A value of a rule; undefined when the rule does not hold. */
export function ruleValue({ rules }: PlanRules, id: string, name: string): number | undefined {
  return rules.get(id)?.values[name]
}
