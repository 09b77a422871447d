import { problem } from '../words/problem'
import { lsiNow } from './amounts'
import { retest } from './dose'
import { choiceOf, type Draft, holding, holds, numberOf, rule, say, truthIn, unmet } from './draft'
import type { Say } from './step'

/** The cell goes on again last, where a step had it off: with all that it needs in order. */
export function cellOn(draft: Draft): void {
  if (!draft.hasCell || !draft.cellOff || draft.refused.has('cell')) return
  const against = holds(draft, 'cell_on') ? reasons(draft) : []
  if (against.length > 0) {
    unmet(draft, 'cell', problem('plan_cell_stays_off', [], { reasons: against.map(({ key }) => key) }))
    draft.cellReasons.push(...against)
    return
  }
  if (holds(draft, 'cell_on') && !draft.secondSaltReading) {
    retest(draft, ['salt'], 'plan.retest.salt_second', ['cell_on'])
    draft.secondSaltReading = true
  }
  const hours = numberOf(draft, 'generator_hours')
  draft.cellRuns = true
  draft.steps.push({
    kind: 'cell',
    says: hours === undefined ? say('plan.step.cell_on') : say('plan.step.cell_on_hours', { hours }),
    how: [say('plan.how.cell_on')],
    cautions: [],
    pump: 'on',
    cell: 'on',
    at: draft.hour,
    wait: 0,
    retest: [],
    rules: holding(draft, 'cell_on'),
    notices: [
      ...NEEDED.filter(([, from]) => numberOf(draft, from) === undefined).map(([name]) => `missing:${name}`),
      ...(hours !== undefined && hours > DAY ? ['over_a_day:generator_hours'] : []),
    ],
    water: draft.column,
    ...lsiNow(draft),
  })
}

const DAY = 24
/** What the cell needs; where it is not known, it has to be looked at before the cell goes on. */
const NEEDED = [
  ['salt', 'salt'],
  ['pump_flow', 'pump_flow'],
  ['minimum_cell_flow', 'minimum_cell_flow_used'],
  ['temperature', 'temperature'],
  ['ph', 'ph'],
  ['lsi', 'step_lsi'],
] as const

/** What speaks against switching the cell on in this water. */
function reasons(draft: Draft): readonly Say[] {
  const found: Say[] = []
  const salt = numberOf(draft, 'salt')
  const low = numberOf(draft, 'cell_salt_low')
  const high = numberOf(draft, 'cell_salt_high')
  const cold = numberOf(draft, 'cell_cold_limit') ?? rule(draft, 'cell_on', 'cold')
  const temperature = numberOf(draft, 'temperature')
  const ph = numberOf(draft, 'ph')
  const { lsi } = lsiNow(draft)
  const flow = numberOf(draft, 'pump_flow')
  const least = numberOf(draft, 'minimum_cell_flow_used')
  const against = (is: boolean, key: string, facts: Say['facts'] = {}) =>
    is && found.push(say(`plan.cell.${key}`, facts))
  if (draft.unusable.has('salt')) against(true, 'salt_unknown')
  else if (salt !== undefined) {
    against(low !== undefined && salt < low, 'salt_low', { salt, low: low ?? 0 })
    against(high !== undefined && salt > high, 'salt_high', { salt, high: high ?? 0 })
  }
  against(flow !== undefined && least !== undefined && flow < least, 'flow', { flow: flow ?? 0, least: least ?? 0 })
  against(temperature !== undefined && cold !== undefined && temperature < cold, 'cold', {
    temperature: temperature ?? 0,
    cold: cold ?? 0,
  })
  against(
    ['ph', 'total_alkalinity', 'free_chlorine'].some((name) => draft.unusable.has(name)),
    'not_tested',
  )
  against(ph !== undefined && ph > (rule(draft, 'cell_on', 'ph_most') ?? ph) + 1e-6, 'ph', { ph: ph ?? 0 })
  against(lsi !== undefined && lsi > (rule(draft, 'cell_on', 'lsi_most') ?? lsi), 'lsi', { lsi: lsi ?? 0 })
  return found
}

const CELL_ROWS = [
  ...['cell_output', 'cell_current', 'cell_setting', 'cell_salt_low', 'cell_salt_high', 'cell_salt_reading'],
  ...['minimum_cell_flow', 'cell_kind', 'target_salt'],
]

/** The pool has a cell where anything of it is given. */
export function hasCell(column: ReadonlyMap<string, unknown>): boolean {
  return CELL_ROWS.some((name) => column.has(name))
}

/** Whether the cell makes chlorine as the plan starts. */
export function runsNow(draft: Draft): boolean {
  return (
    draft.hasCell && truthIn(draft.answers, 'cell_may_run') === true && choiceOf(draft, 'circulation') !== 'no_flow'
  )
}
