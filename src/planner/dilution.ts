import type { Value } from '../functions/define'
import { problem } from '../words/problem'
import { lsiNow } from './amounts'
import type { Answers, Column } from './bench'
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
  unmet,
  verdict,
} from './draft'
import { leftOut } from './judge'
import { isFar, isOver, LIMITED, type Limited, limitOf } from './limits'
import type { Say } from './step'

/** Hours for draining and filling a round where the flows are not known. Common practice, no source. */
const ROUND = 24
const MOST_ROUNDS = 12
/** What chlorine by hand brings back of salt between rounds is not drained again. */
const LEAST_SHARE = 0.01

/** Drains and fills up until everything that is over its limit is within it, before anything is dosed. */
export function dilute(draft: Draft): void {
  if (draft.refused.has('dilution')) return
  const most: Record<string, Value | undefined> = {}
  for (const name of LIMITED) {
    const limit = limitOf(draft, name)
    most[`most_${name}`] = isOver(draft, name, limit) ? limit?.most : undefined
  }
  const governing = LIMITED.filter((name) => most[`most_${name}`] !== undefined)
  if (governing.length === 0) return
  const lost = new Set<string>()
  const before = draft.steps.length
  const water = draft.column
  for (let number = 1; number <= MOST_ROUNDS; number++) {
    const answers = look(draft, most)
    const share = numberIn(answers, 'drain_fraction')
    if (share === undefined) {
      cannot(draft, governing, answers)
      break
    }
    if (share <= LEAST_SHARE || !governing.some((name) => isFar(draft, name))) break
    const left = round(draft, most, share, governing, number)
    for (const name of left) lost.add(name)
    if (governing.some((name) => lost.has(name))) break
  }
  if (draft.steps.length === before) return
  beforeItLeaves(draft, before, water)
  for (const name of governing)
    verdict(draft, name, 'step', say('plan.verdict.over', { quantity: name, most: Number(most[`most_${name}`]) }))
  for (const name of lost) draft.unusable.set(name, 'drain')
  if (lost.size > 0) draft.complete = false
  // how much chlorine was let fall before the water left is not known here
  const chlorine = numberOf(draft, 'free_chlorine') === undefined ? [] : ['free_chlorine']
  retest(draft, [...(lost.size > 0 ? lost : governing), ...chlorine], 'plan.retest.after_filling', ['drain'])
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
  const pool = numberOf(draft, 'volume') ?? 0
  // whole litres or gallons, and the water is foretold with what they are
  const step = draft.drainStep
  const volume = Number((Math.floor((pool * roundShare(draft, wanted)) / step + 1e-9) * step).toFixed(9))
  const share = pool > 0 ? volume / pool : 0
  if (share <= 0) {
    for (const name of governing) {
      leftOut(draft, name, problem('plan_too_shallow'))
      unmet(draft, name, problem('plan_too_shallow'))
    }
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
  const hours = (numberIn(answers, 'drain_time') ?? ROUND / 2) + (numberIn(answers, 'fill_time') ?? ROUND / 2)
  const waits = Math.ceil(hours) + mixing(draft, false)
  const depth = numberIn(answers, 'drain_depth')
  draft.steps.push({
    kind: 'dilute',
    says: say(depth === undefined ? 'plan.step.dilute' : 'plan.step.dilute_depth', {
      amount: volume,
      unit: 'm³',
      percent: Number((100 * share).toFixed(1)),
      round: number,
      governs: governing,
      ...(depth === undefined ? {} : { centimetres: Math.round(100 * depth) }),
    }),
    product: 'water',
    amount: { value: volume, unit: 'm³' },
    how: [say('plan.how.drain')],
    cautions: drainCautions(draft, chlorine),
    pump: 'off',
    ...(draft.hasCell ? { cell: 'off' as const } : {}),
    at,
    wait: waits,
    retest: lost,
    rules: holding(
      draft,
      'drain',
      'discharge',
      'out_of_water',
      ...(governing.includes('cyanuric_acid') ? ['stabilizer_ratio'] : []),
    ),
    notices: [],
    water: draft.column,
    ...lsiNow(draft),
  })
  pass(draft, waits)
  return lost
}

/** What leaves the pool is tested first, and where it goes is asked. */
function beforeItLeaves(draft: Draft, place: number, water: Column): void {
  const most = rule(draft, 'discharge', 'free_chlorine')
  const [first] = draft.steps.slice(place)
  if (most === undefined || !first) return
  const facts = { most, low: rule(draft, 'discharge', 'ph_least') ?? 0, high: rule(draft, 'discharge', 'ph_most') ?? 0 }
  draft.steps.splice(place, 0, {
    kind: 'retest',
    says: say('plan.retest.discharge', { readings: ['free_chlorine', 'ph'], ...facts }),
    how: [say('plan.how.discharge')],
    cautions: [],
    at: first.at,
    wait: 0,
    retest: ['free_chlorine', 'ph'],
    rules: holding(draft, 'discharge'),
    notices: [],
    water,
  })
}

function drainCautions(draft: Draft, chlorine: number | undefined): readonly Say[] {
  const most = rule(draft, 'discharge', 'free_chlorine')
  return [
    ...(holds(draft, 'drain') ? [say('plan.caution.shell_lifts'), say('plan.caution.runs_dry')] : []),
    ...(holds(draft, 'out_of_water') ? [say('plan.caution.out_of_water')] : []),
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
