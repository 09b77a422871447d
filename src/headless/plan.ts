import { Batch } from '../engine/batch'
import type { Bench } from '../planner/bench'
import { caseCatalog } from '../planner/cases/caseCatalog'
import { type PlanWithCases, planWithCases } from '../planner/cases/planWithCases'
import { SHIPPED_CASES } from '../planner/cases/shippedCases'
import { RULES } from '../planner/rules'
import type { Plan, Step } from '../planner/step'
import type { Catalog } from '../worksheet/catalog'
import type { AskedCases } from './cases'
import type { ReadRow } from './readRow'
import type { Table } from './table'
import { withVolumeInterval } from './volumeInterval'

const READINGS = ['ph', 'total_alkalinity', 'calcium_hardness', 'cyanuric_acid', 'salt', 'free_chlorine'] as const

const HEADER: readonly string[] = [
  ...['sample', 'step', 'kind', 'product', 'amount', 'unit', 'packs', 'rest', 'wait_h'],
  ...READINGS,
  ...['lsi', 'rules', 'notices'],
]

/**
 * `--worksheet plan`: one line a step, and one line `none` for a sample that needs nothing. A case that is followed gives its
 * gates, waits and tests as lines with `case:<id>` among their notices; one whose signs are there only, `sign:<id>` at the end.
 */
export function planTable({ sources, chosen }: AskedCases): Table {
  const known = caseCatalog([...SHIPPED_CASES, ...sources], RULES)
  const bench = benchFor(known.catalog)
  return {
    header: HEADER,
    lines: (rows) => rows.flatMap((row) => linesOf(row, planWithCases(bench, known, requestOf(row), chosen))),
  }
}

/** The engine as the planner's bench; one batch for each group of quantities that the planner reads together. */
function benchFor(catalog: Catalog): Bench {
  const batches = new Map<readonly string[], Batch>()
  return {
    catalog,
    evaluate: (columns, wanted) => {
      const batch = batches.get(wanted) ?? new Batch(catalog, wanted, WIDTH)
      batches.set(wanted, batch)
      return batch
        .evaluate(columns)
        .map((outcomes) => new Map(outcomes.map((outcome, i) => [wanted[i] ?? '', outcome] as const)))
    },
  }
}

/** The planner looks at one column at a time, or at sixteen candidates. */
const WIDTH = 16

function requestOf(row: ReadRow) {
  const censored = row.notices.flatMap((notice) => (notice.startsWith('censored:') ? [notice.slice(9)] : []))
  return { column: withVolumeInterval(row.given), censored: new Set(censored) }
}

function linesOf(row: ReadRow, { plan, cases }: PlanWithCases): readonly (readonly string[])[] {
  const last = [...row.notices, ...planNotices(plan), ...caseNotices(cases)]
  // what a case has done by hand alone is no line: the table's kinds are those of the plan
  const steps = plan.steps.filter(({ kind }) => kind !== 'do')
  if (steps.length === 0) {
    return [[row.sample, '1', 'none', '', '', '', '', '', '', ...waterOf(plan.end, plan.lsi), '', last.join(' ')]]
  }
  return steps.map((step, i) => {
    const notices = [...stepNotices(step), ...(i === steps.length - 1 ? last : [])]
    return [
      row.sample,
      String(i + 1),
      step.kind,
      step.product ?? '',
      written(step.amount?.value),
      step.amount?.unit ?? '',
      written(step.amount?.packs?.whole),
      written(step.amount?.packs?.rest),
      String(step.wait),
      ...waterOf(step.water, step.lsi),
      step.rules.join(' '),
      notices.join(' '),
    ]
  })
}

function waterOf(water: Step['water'], lsi: number | undefined): readonly string[] {
  return [...READINGS.map((name) => written(water.get(name))), written(lsi)]
}

/** The cases that the plan follows, and those of which only the signs are there. */
function caseNotices(cases: PlanWithCases['cases']): readonly string[] {
  return cases.flatMap(({ id, when, followed }) =>
    followed ? [`case:${id}`] : when.truth === 'yes' ? [`sign:${id}`] : [],
  )
}

function stepNotices({ kind, retest, part, times, notices, case: of }: Step): readonly string[] {
  return [
    ...notices,
    ...(of === undefined ? [] : [`case:${of}`]),
    ...(kind === 'retest' ? retest.map((name) => `test:${name}`) : []),
    ...(part === undefined ? [] : [part === 1 ? 'part:1' : 'at_most:2']),
    ...(times === undefined || times === 1 ? [] : [`times:${times}`]),
  ]
}

/** What the whole plan leaves out, advises against or cannot meet. */
function planNotices({ verdicts, unmet }: Plan): readonly string[] {
  const found = verdicts.flatMap(({ quantity, verdict, reason }) => {
    if (verdict === 'nothing' || verdict === 'step') return []
    const names = reason.facts.names
    const missing = Array.isArray(names) ? names.map((name) => `missing:${String(name).split('|')[0]}`) : []
    return [`${verdict}:${quantity}`, ...missing]
  })
  return [...new Set([...found, ...unmet.map(({ quantity }) => `unmet:${quantity}`)])]
}

function written(value: unknown): string {
  return typeof value === 'number' ? String(value) : ''
}
