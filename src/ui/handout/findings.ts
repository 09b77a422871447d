import type { Plan, Say, Verdict } from '../../planner/step'
import { hasWords, say } from '../../words/say'
import { labelInside, labelOf } from '../labelOf'
import { planSentence, type Reader } from '../plan/planSentence'

/** What harms people comes first, then what harms the water's keeping, then what harms the pool. */
const WORST = [
  'free_chlorine',
  'combined_chlorine',
  'total_chlorine',
  'ph',
  'turbidity',
  'cyanuric_acid',
  'copper',
  'iron',
  'total_alkalinity',
  'salt',
  'calcium_hardness',
  'borate',
  'tds',
] as const

/** Verdicts that are findings: a step answers them, or a test does. */
const FINDINGS = new Set<Verdict['verdict']>(['step', 'test_again'])

const GATES = new Set(['censored_reading', 'old_bottle', 'bleached_test', 'high_chlorine', 'second_salt_reading'])

/** Readings that a gate has tested again before anything rests on them. */
function failedGates(plan: Plan): readonly string[] {
  const tests = plan.steps.filter(({ kind, rules }) => kind === 'retest' && rules.some((rule) => GATES.has(rule)))
  return [...new Set(tests.flatMap(({ retest }) => retest))]
}

/** What was found, worst first, a sentence each. */
export function findings(plan: Plan, reader: Reader): readonly string[] {
  const rank = (quantity: string) => {
    const at = (WORST as readonly string[]).indexOf(quantity)
    return at < 0 ? WORST.length : at
  }
  const failed = failedGates(plan)
  const found = plan.verdicts.filter(
    ({ quantity, verdict, reason }) =>
      !failed.includes(quantity) &&
      reason.key !== 'plan.verdict.runs_short' &&
      (FINDINGS.has(verdict) || (verdict === 'left_out' && reader.water.has(quantity))),
  )
  return [
    ...(failed.length === 0
      ? []
      : [planSentence(reader, { key: 'handout.found.failed_gate', facts: { names: failed } })]),
    ...found.toSorted((a, b) => rank(a.quantity) - rank(b.quantity)).map((one) => sentenceOf(one, reader)),
  ]
}

function sentenceOf({ quantity, verdict, reason }: Verdict, reader: Reader): string {
  const row = reader.catalog.quantities.get(quantity)?.row
  if (verdict === 'left_out') {
    const key = waitsForFill(reason) ? 'handout.found.fill_unknown' : 'handout.found.left_out'
    const says = planSentence(reader, { key: reason.key, facts: { quantity, ...reason.facts, reading: quantity } })
    return planSentence(reader, { key, facts: { ...reason.facts, reading: quantity, says } })
  }
  const key = sideOf(quantity, reason, reader).replace(/^plan\.verdict\./, 'handout.found.')
  const facts = { quantity, ...reason.facts, reading: quantity, name: labelOf(quantity, row) }
  if (hasWords(key)) return planSentence(reader, { key, facts })
  return say('handout.found.other', { name: facts.name, says: planSentence(reader, { key: reason.key, facts }) })
}

/** Water has to be renewed, and what it is filled up with was not tested. */
export function waitsForFill({ key, facts }: Say): boolean {
  const names = Array.isArray(facts.names) ? (facts.names as readonly string[]) : []
  return key === 'plan.verdict.missing' && names.length > 0 && names.every((name) => name.startsWith('fill_'))
}

/**
 * Where a step moves a reading through its target, the plan's verdict may speak of the water at that step; the sheet speaks of
 * the reading as it was taken.
 */
function sideOf(quantity: string, { key, facts }: Say, reader: Reader): string {
  const [value, target] = [reader.water.get(quantity), facts.target]
  if (typeof value !== 'number' || typeof target !== 'number') return key
  if (key === 'plan.verdict.low' && value > target) return 'plan.verdict.high'
  return key === 'plan.verdict.high' && value < target ? 'plan.verdict.low' : key
}

/** What needs nothing: its names, for one sentence; empty where there is none. */
export function leftAlone(plan: Plan, reader: Reader): string {
  const names = plan.verdicts
    .filter(({ verdict }) => verdict === 'nothing')
    .map(({ quantity }) => labelInside(quantity, reader.catalog.quantities.get(quantity)?.row))
  return names.length === 0 ? '' : say('handout.alone', { names: [...new Set(names)] })
}

/** What need not be bought, a sentence each. */
export function spared(plan: Plan, reader: Reader): readonly string[] {
  return plan.verdicts
    .filter(({ verdict }) => verdict === 'do_not_buy')
    .map(({ quantity, reason }) =>
      planSentence(reader, { key: reason.key, facts: { quantity, ...reason.facts, reading: quantity } }),
    )
}
