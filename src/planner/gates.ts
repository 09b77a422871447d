import { isFreshPlaster } from './cautions'
import { wait } from './clock'
import { gate, retest } from './dose'
import { choiceOf, type Draft, holds, moveTo, numberOf, problemIn, rule, say, testError, usable } from './draft'
import { TABLETS } from './keptOut'
import { neutralize } from './neutralize'

/**
 * What has to be in order before anything goes in. A reading that fails is not used until it is tested again. Answers false
 * where nothing at all may be done.
 */
export function passGates(draft: Draft): boolean {
  if (!circulates(draft)) return false
  otherSanitizer(draft)
  limitsOnly(draft)
  impossible(draft)
  oldBottle(draft)
  bleachedTest(draft)
  highChlorine(draft)
  saltReadings(draft)
  freshPlaster(draft)
  return true
}

/** No step may rest on these readings; what to test stands there instead. */
function stopReading(
  draft: Draft,
  readings: readonly string[],
  id: string,
  key: string,
  facts: Readonly<Record<string, number>> = {},
): void {
  for (const name of readings) draft.unusable.set(name, id)
  draft.complete = false
  retest(draft, readings, key, [id], facts)
}

/** Without flow, acid or chlorine stands in pockets. */
function circulates(draft: Draft): boolean {
  if (!holds(draft, 'circulation')) return true
  const state = choiceOf(draft, 'circulation') ?? (draft.column.get('pump_flow') === 0 ? 'no_flow' : 'running')
  if (state === 'running') return true
  gate(draft, `plan.gate.${state}`, ['circulation', 'out_of_water'])
  return false
}

const CHLORINE_TARGETS = ['target_free_chlorine', 'target_hocl', 'target_cyanuric_acid']

function otherSanitizer(draft: Draft): void {
  const sanitizer = choiceOf(draft, 'sanitizer')
  if (!holds(draft, 'other_sanitizer') || sanitizer === undefined || sanitizer === 'chlorine') return
  for (const stage of ['chlorine', 'stabilizer', 'cell', 'combined']) draft.refused.set(stage, 'other_sanitizer')
  draft.noChlorine = true
  if (draft.hasCell || CHLORINE_TARGETS.some((name) => draft.column.has(name))) {
    gate(draft, 'plan.gate.other_sanitizer', ['other_sanitizer'], { sanitizer })
  }
}

/** Readings that amounts are computed with. */
const COMPUTED_WITH = new Set([
  ...['ph', 'temperature', 'free_chlorine', 'total_chlorine', 'total_alkalinity'],
  ...['calcium_hardness', 'cyanuric_acid', 'borate', 'salt'],
])

/** More than, or less than, what the test can tell: nothing is computed with it. */
function limitsOnly(draft: Draft): void {
  if (!holds(draft, 'censored_reading')) return
  const names = [...draft.censored].filter((name) => COMPUTED_WITH.has(name))
  for (const name of names) {
    moveTo(draft, { [name]: undefined })
    stopReading(draft, [name], 'censored_reading', 'plan.retest.censored')
  }
  draft.measured = draft.column
}

/** Readings that no water has together: one of them is wrong, and nobody knows which. */
function impossible(draft: Draft): void {
  if (!holds(draft, 'impossible')) return
  const [free, total] = ['free_chlorine', 'total_chlorine'].map((name) => usable(draft, name))
  if (free !== undefined && total !== undefined && free > total + testError(draft, 'free_chlorine')) {
    draft.noChlorine = true
    stopReading(draft, ['free_chlorine', 'total_chlorine'], 'impossible', 'plan.retest.free_over_total')
  }
  if (problemIn(draft.answers, 'step_lsi')?.code === 'no_such_water') {
    stopReading(draft, ['ph', 'total_alkalinity', 'cyanuric_acid'], 'impossible', 'plan.retest.no_such_water')
  }
}

/** Chlorine leaves the bottle, and carbon dioxide with it. */
function oldBottle(draft: Draft): void {
  const most = rule(draft, 'old_bottle', 'hours')
  const age = numberOf(draft, 'sample_age')
  if (most === undefined || age === undefined || age <= most || !draft.column.has('free_chlorine')) return
  draft.noChlorine = true
  stopReading(draft, ['free_chlorine', 'total_chlorine'], 'old_bottle', 'plan.retest.at_the_pool', { hours: age })
}

/** A test that was bleached reads next to nothing in a pool that may hold thirty. */
function bleachedTest(draft: Draft): void {
  const most = rule(draft, 'bleached_test', 'free_chlorine_at_most')
  const parts = rule(draft, 'bleached_test', 'parts') ?? 1
  const free = numberOf(draft, 'free_chlorine')
  if (most === undefined || free === undefined || free > most || draft.unusable.has('free_chlorine')) return
  const doubt = choiceOf(draft, 'chlorine_doubt')
  const higher = (numberOf(draft, 'combined_chlorine') ?? 0) > most
  if ((doubt === undefined || doubt === 'none') && !higher) return
  if ((numberOf(draft, 'chlorine_sample_dilution') ?? 1) >= parts) return
  gate(draft, 'plan.gate.bleached_test', ['bleached_test'], { free })
  draft.noChlorine = true
  stopReading(draft, ['free_chlorine', 'ph', 'total_alkalinity'], 'bleached_test', 'plan.retest.diluted', {
    parts: parts - 1,
  })
}

/** Over about 10 mg/L the dyes of the pH and alkalinity tests err. */
function highChlorine(draft: Draft): void {
  const most = rule(draft, 'high_chlorine', 'free_chlorine')
  const free = numberOf(draft, 'free_chlorine')
  if (most === undefined || free === undefined || free <= most || draft.unusable.has('free_chlorine')) return
  gate(draft, 'plan.gate.high_chlorine', ['high_chlorine'], { free, most })
  draft.noChlorine = true
  for (const name of ['ph', 'total_alkalinity']) draft.unusable.set(name, 'high_chlorine')
  if (!neutralize(draft, most)) letFall(draft, free, most)
  stopReading(draft, ['free_chlorine', 'ph', 'total_alkalinity'], 'high_chlorine', 'plan.retest.after_fall')
}

/** Until the demand has brought it down; where the demand is not known, a day at a time. */
function letFall(draft: Draft, free: number, most: number): void {
  const demand = numberOf(draft, 'chlorine_demand')
  const hours = demand === undefined || demand <= 0 ? 24 : Math.ceil(((free - most) / demand) * 24)
  draft.cellRuns = false
  draft.cellOff = true
  wait(draft, hours, 'plan.step.let_fall', ['high_chlorine'], undefined, 'off')
}

/** No symptom leads to salt without a second, fresh reading. */
function saltReadings(draft: Draft): void {
  const apart = rule(draft, 'second_salt_reading', 'apart')
  const found = draft.saltApart
  const only = draft.column.has('cell_salt_reading') && numberOf(draft, 'salt_used') === undefined
  if (apart === undefined || !((found !== undefined && found > apart) || only)) return
  if (!only && found !== undefined) {
    stopReading(draft, ['salt'], 'second_salt_reading', 'plan.retest.salt_apart', { apart: found })
  } else stopReading(draft, ['salt'], 'second_salt_reading', 'plan.retest.salt_alarm')
}

function freshPlaster(draft: Draft): void {
  if (!isFreshPlaster(draft)) return
  for (const stage of ['salt', 'cell', 'tablets']) draft.refused.set(stage, 'fresh_plaster')
  const tablets = TABLETS.has(choiceOf(draft, 'chlorine_product') ?? '')
  if (draft.hasCell || tablets) {
    gate(draft, 'plan.gate.fresh_plaster', ['fresh_plaster'], { days: rule(draft, 'fresh_plaster', 'days') ?? 0 }, [
      say('plan.caution.finish_maker'),
    ])
  }
}
