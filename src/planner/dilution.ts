import type { Value } from '../functions/define'
import { problem } from '../words/problem'
import { lsiNow } from './amounts'
import type { Answers } from './bench'
import { DILUTED } from './bench'
import { mixing, pass } from './clock'
import { retest } from './dose'
import {
  choiceOf,
  type Draft,
  holding,
  holds,
  look,
  moveTo,
  numberIn,
  numberOf,
  problemIn,
  rule,
  say,
  testError,
  unmet,
  usable,
  verdict,
} from './draft'
import { leftOut } from './judge'
import type { Say } from './step'

const LIMITED = ['salt', 'cyanuric_acid', 'calcium_hardness', 'total_alkalinity', 'tds'] as const
type Limited = (typeof LIMITED)[number]

interface Limit {
  /** over this by more than the test's error it is too much */
  readonly over: number
  /** where dilution takes it */
  readonly most: number
}

/** Hours for draining and filling a round where the flows are not known. Common practice, no source. */
const ROUND = 24
const MOST_ROUNDS = 12
/** What chlorine by hand brings back of salt between rounds is not drained again. */
const LEAST_SHARE = 0.01

/** Drains and fills up until everything that is over its limit is within it, before anything is dosed. */
export function dilute(draft: Draft): void {
  const most: Record<string, Value | undefined> = {}
  for (const name of LIMITED) {
    const limit = limitOf(draft, name)
    most[`most_${name}`] = isOver(draft, name, limit) ? limit?.most : undefined
  }
  const governing = LIMITED.filter((name) => most[`most_${name}`] !== undefined)
  if (governing.length === 0) return
  const lost = new Set<string>()
  let rounds = 0
  for (; rounds < MOST_ROUNDS; rounds++) {
    const answers = look(draft, most)
    const share = numberIn(answers, 'drain_fraction')
    if (share === undefined) {
      cannot(draft, governing, answers)
      break
    }
    if (share <= LEAST_SHARE) break
    const left = round(draft, most, share, governing, rounds + 1)
    for (const name of left) lost.add(name)
    if (governing.some((name) => lost.has(name))) break
  }
  if (rounds === 0) return
  for (const name of governing)
    verdict(draft, name, 'step', say('plan.verdict.over', { quantity: name, most: Number(most[`most_${name}`]) }))
  for (const name of lost) draft.unusable.set(name, 'drain')
  if (lost.size > 0) draft.complete = false
  retest(draft, lost.size > 0 ? [...lost] : governing, 'plan.retest.after_filling', ['drain'])
}

function limitOf(draft: Draft, name: Limited): Limit | undefined {
  const given = numberOf(draft, `most_${name}`)
  if (given !== undefined) {
    const least = leastLimit(draft, name)
    if (given < least) unmet(draft, `most_${name}`, problem('plan_limit_under_target', [], { most: given, least }))
    return given < least ? undefined : { over: given, most: given }
  }
  if (name === 'salt') {
    const top = numberOf(draft, 'cell_salt_high')
    return top === undefined ? undefined : { over: top, most: Math.max(0, top - testError(draft, 'salt')) }
  }
  const closes = rule(draft, 'stabilizer_ratio', 'stabilizer_most')
  if (name !== 'cyanuric_acid' || closes === undefined) return undefined
  return { over: closes, most: Math.min(numberOf(draft, 'target_cyanuric_acid') ?? closes, closes) }
}

/** A limit under what the plan is to dose up to cannot be kept. */
function leastLimit(draft: Draft, name: Limited): number {
  const salt = numberOf(draft, 'target_salt_used') ?? 0
  if (name === 'tds') return salt === 0 ? 0 : salt + OTHER_SOLIDS
  return name === 'salt' ? salt : (numberOf(draft, `target_${name}`) ?? 0)
}

/** What is dissolved beside salt in a balanced water, mg/L. Common practice, no source. */
const OTHER_SOLIDS = 500

function isOver(draft: Draft, name: Limited, limit: Limit | undefined): boolean {
  const reading = readingOf(draft, name)
  if (limit === undefined || reading === undefined || reading <= limit.over) return false
  return reading > limit.over + testError(draft, name) || !holds(draft, 'test_again')
}

/** What lies over its limit by no more than the error of its test. */
export function doubtfullyOver(draft: Draft): readonly string[] {
  if (!holds(draft, 'test_again')) return []
  return LIMITED.filter((name) => {
    const limit = limitOf(draft, name)
    const reading = readingOf(draft, name)
    return (
      limit !== undefined &&
      reading !== undefined &&
      reading > limit.over + testError(draft, name) / 2 &&
      !isOver(draft, name, limit)
    )
  })
}

function readingOf(draft: Draft, name: Limited): number | undefined {
  return usable(draft, name === 'tds' ? 'tds_used' : name)
}

/** The share of one round: no more than may go at once, and on vinyl never under the least depth in the shallow end. */
function roundShare(draft: Draft, wanted: number): number {
  const largest = Math.min(rule(draft, 'drain', 'largest') ?? 1, numberOf(draft, 'largest_single_drain') ?? 1)
  const share = Math.min(largest, Math.ceil(wanted * 200 - 1e-9) / 200)
  const keep = rule(draft, 'drain', 'vinyl_depth_left')
  const shallow = numberOf(draft, 'depth_shallow')
  const fall = numberIn(look(draft, { drain_fraction: share }), 'drain_depth')
  if (keep === undefined || choiceOf(draft, 'shell') !== 'vinyl' || shallow === undefined || fall === undefined)
    return share
  return fall <= 0 || shallow - fall >= keep ? share : Math.max(0, (share * (shallow - keep)) / fall)
}

/** One round; answers the readings that are not known after it, for want of a fill reading. */
function round(
  draft: Draft,
  most: Readonly<Record<string, Value | undefined>>,
  wanted: number,
  governing: readonly Limited[],
  number: number,
): readonly string[] {
  const share = roundShare(draft, wanted)
  if (share <= 0) {
    for (const name of governing) unmet(draft, name, problem('plan_too_shallow'))
    return governing
  }
  const answers = look(draft, { ...most, drain_fraction: share })
  const after: Record<string, Value | undefined> = { cell_salt_reading: undefined }
  const lost: string[] = []
  for (const [reading, from] of Object.entries(DILUTED)) {
    if (!draft.column.has(reading)) continue
    after[reading] = numberIn(answers, from)
    if (after[reading] === undefined) lost.push(reading)
  }
  if (draft.column.has('iron')) after.iron = numberIn(answers, 'iron_after_dilution') ?? draft.column.get('iron')
  const at = draft.hour
  const chlorine = numberOf(draft, 'free_chlorine')
  moveTo(draft, after)
  draft.cellRuns = false
  draft.cellOff = true
  draft.secondSaltReading = false
  const volume = (numberOf(draft, 'volume') ?? 0) * share
  const hours = (numberIn(answers, 'drain_time') ?? ROUND / 2) + (numberIn(answers, 'fill_time') ?? ROUND / 2)
  const waits = Math.ceil(hours) + mixing(draft, false)
  const depth = numberIn(answers, 'drain_depth')
  draft.steps.push({
    kind: 'dilute',
    says: say(depth === undefined ? 'plan.step.dilute' : 'plan.step.dilute_depth', {
      amount: Number(volume.toFixed(3)),
      percent: Number((100 * share).toFixed(1)),
      round: number,
      governs: governing,
      ...(depth === undefined ? {} : { centimetres: Math.round(100 * depth) }),
    }),
    product: 'water',
    amount: { value: Number(volume.toFixed(3)), unit: 'm³' },
    how: [say('plan.how.drain')],
    cautions: drainCautions(draft, chlorine),
    pump: 'off',
    ...(draft.hasCell ? { cell: 'off' as const } : {}),
    at,
    wait: waits,
    retest: lost,
    rules: holding(draft, 'drain', 'discharge', ...(governing.includes('cyanuric_acid') ? ['stabilizer_ratio'] : [])),
    notices: [],
    water: draft.column,
    ...lsiNow(draft),
  })
  pass(draft, waits)
  return lost
}

function drainCautions(draft: Draft, chlorine: number | undefined): readonly Say[] {
  const most = rule(draft, 'discharge', 'free_chlorine')
  return [
    ...(holds(draft, 'drain') ? [say('plan.caution.shell_lifts'), say('plan.caution.runs_dry')] : []),
    ...(most === undefined ? [] : [say('plan.caution.discharge', { most })]),
    ...(most !== undefined && chlorine !== undefined && chlorine > most
      ? [say('plan.caution.dechlorinate', { most })]
      : []),
  ]
}

function cannot(draft: Draft, governing: readonly Limited[], answers: Answers): void {
  const why =
    problemIn(answers, 'drain_fraction') ?? problem('missing', [], { names: governing.map((name) => `fill_${name}`) })
  for (const name of governing) {
    leftOut(draft, name, why)
    unmet(draft, name, why)
  }
}
