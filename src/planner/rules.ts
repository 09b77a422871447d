import type { Value } from '../functions/define'
import { isProblem, type Problem, problem } from '../words/problem'
import shipped from './rules.json'

/**
 * A rule of the plan. The sentence that gives its reason is `rule.<id>` in the catalogue; `basis` says where it comes from. A
 * rule that is not in the list does not hold.
 */
export interface Rule {
  readonly id: string
  readonly values: Readonly<Record<string, number>>
  /** between which each value may be changed in a copy: never past what keeps people, pool and cell safe */
  readonly bounds: Readonly<Record<string, readonly [least: number, most: number]>>
  readonly units: Readonly<Record<string, string>>
  readonly basis: string
}

/** What a plan respects: rules, the error of each test, and the steps in which an amount can be measured. */
export interface PlanRules {
  readonly rules: ReadonlyMap<string, Rule>
  /** by quantity, in its canonical unit */
  readonly testErrors: ReadonlyMap<string, number>
  /** by unit: under `below` (null: everything else) an amount is measured in steps of `step` */
  readonly measurable: Measurable
  /** the same in kg and L for whoever measures in pounds, ounces, gallons, cups and fluid ounces */
  readonly measurableUs: Measurable
}
export type MeasureStep = readonly [below: number | null, step: number]
export type Measurable = Readonly<Record<'kg' | 'L', readonly MeasureStep[]>>

// NIST SP 811 (2008), appendix B: exact
const POUND = 0.45359237
const US_GALLON = 3.785411784

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
  const measurable = readMeasures(json.measurable, ['kg', 1], ['L', 1])
  const measurableUs = readMeasures(json.measurable_us, ['lb', POUND], ['US gal', US_GALLON])
  if (!measurable) return wrong('measurable')
  return measurableUs ? { rules, testErrors, measurable, measurableUs } : wrong('measurable_us')
}

function readRule(rule: unknown): Rule | null {
  if (!isRecord(rule) || typeof rule.id !== 'string' || typeof rule.basis !== 'string' || !isRecord(rule.values))
    return null
  const known = NAMES.get(rule.id)
  const values = Object.entries(rule.values)
  if (!known || values.length !== known.length) return null
  const { bounds, units } = SHIPPED.get(rule.id) ?? NO_VALUES
  const inside = ([name, value]: readonly [string, unknown]) => {
    const [least, most] = bounds[name] ?? [0, Number.POSITIVE_INFINITY]
    return known.includes(name) && isAmount(value) && value >= least && value <= most
  }
  if (!values.every(inside)) return null
  return { id: rule.id, values: rule.values as Rule['values'], bounds, units, basis: rule.basis }
}

type Size = readonly [unit: string, size: number]

/** Steps of measuring, in kg and L whatever they are written in. */
function readMeasures(json: unknown, mass: Size, volume: Size): Measurable | null {
  if (!isRecord(json)) return null
  const [kg, L] = [mass, volume].map(([unit, size]) =>
    readMeasure(json[unit])?.map(([below, step]): MeasureStep => [below === null ? null : below * size, step * size]),
  )
  return kg && L ? { kg, L } : null
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

const NO_VALUES: Pick<Rule, 'bounds' | 'units'> = { bounds: {}, units: {} }

/** Names of values, with their bounds and units, are those of the shipped rules whatever a file says of them. */
const SHIPPED = new Map<string, Pick<Rule, 'bounds' | 'units'>>(
  shipped.rules.map(({ id, ...rule }) => [id, { ...NO_VALUES, ...(rule as Partial<Rule>) }]),
)
const NAMES = new Map<string, readonly string[]>(shipped.rules.map(({ id, values }) => [id, Object.keys(values)]))

/** The rules that come with the app. */
export const RULES: PlanRules = sound(readRules(shipped))

function sound(rules: PlanRules | Problem): PlanRules {
  if (isProblem(rules)) throw new RangeError(`the shipped plan rules are not sound: ${rules.path.join('.')}`)
  return rules
}

/** What is given of a pool, with the error of the salt test where none was given: the worksheets have a row for it. */
export function withTestErrors(
  column: ReadonlyMap<string, Value>,
  { testErrors }: PlanRules,
): ReadonlyMap<string, Value> {
  const salt = testErrors.get('salt')
  return salt === undefined || column.has('salt_test_error') ? column : new Map([...column, ['salt_test_error', salt]])
}

/** A value of a rule; undefined when the rule does not hold. */
export function ruleValue({ rules }: PlanRules, id: string, name: string): number | undefined {
  return rules.get(id)?.values[name]
}
