import { balance } from './balance'
import type { Bench, Column } from './bench'
import { addBorate } from './borate'
import { addCalcium } from './calcium'
import { enterCases, followCases } from './cases/followCases'
import { planCase } from './cases/holdingCases'
import type { CaseStanding } from './cases/standing'
import { cellOn, hasCell, runsNow } from './cell'
import { raiseChlorine } from './chlorine'
import { chlorineWanted } from './chlorineWanted'
import { treatCombined } from './combined'
import { dilute } from './dilution'
import { answersTo, changed, type Draft, numberIn, numberOf, rule, say } from './draft'
import { finished, lastChlorine, lastTest } from './finish'
import { passGates } from './gates'
import { holdMetals } from './metals'
import { type PlanRules, RULES, withTestErrors } from './rules'
import { addSalt, saltWanted } from './salt'
import type { Shelf } from './shelf'
import { startStabilizer } from './stabilizer'
import type { Plan, Swim } from './step'
import { maySwim } from './swim'
import { testAgain } from './testAgain'

const LITRE = 0.001
/** m³, by definition: NIST SP 811 (2008), appendix B */
const US_GALLON = 0.003785411784

export interface PlanRequest {
  /** readings, pool, targets and products, by contract name in canonical units */
  readonly column: Column
  /** products on hand, where there is more to choose from than the column names */
  readonly shelf?: Shelf
  /** a person's own copy of the rules */
  readonly rules?: PlanRules
  /** how the cases stand that this plan follows (`holdingCases`) */
  readonly cases?: readonly CaseStanding[]
  /** in whose measures amounts are rounded down: kilograms and litres, or pounds, ounces, gallons and cups */
  readonly profile?: 'metric' | 'us'
  /** readings that are only a limit of their test */
  readonly censored?: ReadonlySet<string>
}

/**
 * The ordered steps that take a water to its targets: gates first, then metals, dilution, chlorine to what is wanted today,
 * alkalinity and pH, stabilizer, calcium, salt, the cell, and the last test. It decides only; every amount and every water
 * is worked out by the worksheets on the bench.
 */
export function makePlan(bench: Bench, request: PlanRequest): Plan {
  const draft = start(bench, request)
  const cases = request.cases ?? []
  enterCases(draft, cases)
  const swim = () => swimWith(draft, cases)
  const first = swim()
  followCases(draft, cases, 'before')
  if (draft.refused.has('all')) {
    draft.complete = false
    followCases(draft, cases, 'after')
    return finished(draft, first)
  }
  if (!passGates(draft)) return finished(draft, swim())
  // a reading that failed a gate may close the pool, and opens none
  const now = draft.unusable.size > 0 ? either(first, swim()) : first
  ownSteps(draft)
  followCases(draft, cases, 'after')
  return finished(draft, now)
}

/** Nobody swims where one of two verdicts says so; what is known goes before what has to be tested. */
function either(first: Swim, second: Swim): Swim {
  const reasons = [
    ...first.reasons,
    ...second.reasons.filter(({ key }) => !first.reasons.some((one) => one.key === key)),
  ]
  return { now: reasons.length === 0 ? 'yes' : 'no', reasons }
}

/** What the plan does by its rules alone. */
function ownSteps(draft: Draft): void {
  testAgain(draft)
  holdMetals(draft)
  dilute(draft)
  draft.finalSalt = saltWanted(draft)
  const salt = draft.finalSalt
  if (balanceFirst(draft) || draft.phFirst) {
    addBorate(draft)
    chlorinateWithin(draft, () => balance(draft))
  } else {
    chlorinate(draft)
    addBorate(draft)
    balance(draft)
  }
  const restOfStabilizer = startStabilizer(draft)
  balance(draft)
  addCalcium(draft)
  if (salt !== undefined) addSalt(draft, salt)
  balance(draft)
  cellOn(draft)
  restOfStabilizer?.()
  draft.measured = draft.column
  settle(draft)
  lastTest(draft)
}

/** Nobody swims while a case that closes the pool holds. */
function swimWith(draft: Draft, cases: readonly CaseStanding[]): Swim {
  const { now, reasons } = maySwim(draft)
  const closed = cases.filter(({ source }) => source.definition.closes)
  if (closed.length === 0) return { now, reasons }
  const why = closed.map(({ source }) => say('plan.swim.case', { rule: `case.${source.definition.id}` }))
  return { now: 'no', reasons: [...why, ...reasons] }
}

/** Chlorine after the pH; where alkalinity takes days of air, after the first acid, for today's chlorine does not wait for days. */
function chlorinateWithin(draft: Draft, work: () => void): void {
  let done = false
  const once = () => {
    draft.beforeAir = undefined
    if (!done) chlorinate(draft)
    done = true
  }
  draft.beforeAir = once
  work()
  once()
}

function chlorinate(draft: Draft): void {
  if (draft.noChlorine) return
  treatCombined(draft)
  raiseChlorine(draft)
}

/** What the steps themselves have moved: pH by stabilizer, chlorine by time, each by the other. */
function settle(draft: Draft): void {
  for (let pass = 0; pass < 3; pass++) {
    const before = draft.steps.length
    balance(draft)
    lastChlorine(draft)
    if (draft.steps.length === before) return
  }
}

/** pH comes before chlorine where it is high, or where chlorine is to go high. */
function balanceFirst(draft: Draft): boolean {
  const ph = numberOf(draft, 'ph')
  const over = rule(draft, 'order', 'ph_over')
  const most = rule(draft, 'order', 'chlorine_over')
  if (over !== undefined && ph !== undefined && ph > over) return true
  return most !== undefined && (numberOf(draft, 'target_free_chlorine') ?? chlorineWanted(draft) ?? 0) > most
}

/** Salt as the worksheets take it, whichever way it was read, and the volume: neither follows from what the plan puts in. */
function start(bench: Bench, request: PlanRequest): Draft {
  const { column, shelf = [], rules = RULES, censored = new Set(), cases = [], profile = 'metric' } = request
  const first = answersTo(bench, column)
  const salt = numberIn(first, 'salt_used')
  const water = changed(withTestErrors(column, rules), {
    volume: numberIn(first, 'volume'),
    volume_low: numberIn(first, 'volume_low'),
    volume_high: numberIn(first, 'volume_high'),
    ...(salt === undefined ? {} : { salt, chloride: undefined, conductivity: undefined }),
  })
  const draft: Draft = {
    bench,
    rules: profile === 'us' ? { ...rules, measurable: rules.measurableUs } : rules,
    shelf,
    taken: water,
    measured: water,
    column: water,
    answers: answersTo(bench, water),
    hour: 0,
    today: { day: 0, products: new Set() },
    steps: [],
    verdicts: [],
    unmet: [],
    censored,
    refused: new Map(),
    barred: new Set(cases.flatMap(({ source }) => source.definition.bars ?? [])),
    drainStep: profile === 'us' ? US_GALLON : LITRE,
    phFirst: cases.some(({ source }) => source.definition.ph_first),
    cases: cases.map((standing) => planCase(standing, column)),
    unusable: new Map(),
    hasCell: hasCell(column),
    cellRuns: false,
    cellOff: false,
    chlorineLost: false,
    sinceChlorine: 0,
    // of the readings as they came: the plan goes on with one
    saltApart: numberIn(first, 'salt_disagreement'),
    secondSaltReading: ['cell_salt_reading', 'chloride', 'conductivity'].filter((name) => column.has(name)).length > 0,
    finalSalt: undefined,
    metals: false,
    cellReasons: [],
    carbonateAt: undefined,
    beforeAir: undefined,
    noChlorine: false,
    complete: true,
  }
  draft.cellRuns = runsNow(draft)
  return draft
}
