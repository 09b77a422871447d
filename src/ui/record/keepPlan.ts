import { newId } from '../../notebook/create'
import type { SimpleEdit } from '../../notebook/edit'
import { cellKey, type Notebook, type Reading, type Sample } from '../../notebook/notebook'
import { baselineOf } from '../../notebook/order'
import type { Addition, GivenStep, PlanRecord } from '../../notebook/record'
import type { Outline } from '../../worksheet/catalog'
import type { GivenPlan } from './givenPlan'

/**
 * What keeps a plan as it was given: the record of it and, where the baseline's readings were typed and are no sample yet, a sample
 * of them, so that the next test has something to be held against.
 * @param date ISO date and time
 * @param name of such a sample
 */
export function keepPlan(
  notebook: Notebook,
  catalog: Pick<Outline, 'quantities'>,
  scenario: string,
  given: GivenPlan,
  date: string,
  name: string,
): { readonly plan: PlanRecord; readonly edits: readonly SimpleEdit[] } {
  const of = notebook.scenarios[scenario]
  const isBaseline = baselineOf(notebook).id === scenario
  const typed = of?.sample == null && isBaseline ? typedSample(notebook, catalog, scenario, date, name) : null
  const plan = { id: newId(), date, scenario: of?.name ?? '', sample: of?.sample ?? typed?.id ?? null, ...given }
  const known = typed === null || Object.hasOwn(notebook.samples, typed.id)
  return {
    plan,
    edits: [...(known ? [] : [{ type: 'put_sample', sample: typed } as const]), { type: 'put_plan_record', plan }],
  }
}

/** The readings typed in a scenario as a sample: one that the notebook has already, or a new one; null where there are none. */
function typedSample(
  notebook: Notebook,
  catalog: Pick<Outline, 'quantities'>,
  scenario: string,
  date: string,
  name: string,
): Sample | null {
  const readings: Record<string, Reading> = {}
  for (const { name: quantity, worksheet, formula } of catalog.quantities.values()) {
    const cell = notebook.cells[cellKey(scenario, quantity)]
    const isReading = cell?.kind === 'value' || cell?.kind === 'choice' || cell?.kind === 'limit'
    if (worksheet === 'sample' && formula === null && isReading) readings[quantity] = cell
  }
  if (Object.keys(readings).length === 0) return null
  const same = Object.values(notebook.samples).find(
    (sample) => !sample.elsewhere && sameReadings(sample.readings, readings),
  )
  return same ?? { id: newId(), name, date, elsewhere: false, readings }
}

function sameReadings(a: Sample['readings'], b: Sample['readings']): boolean {
  const names = Object.keys(a)
  return (
    names.length === Object.keys(b).length && names.every((key) => JSON.stringify(a[key]) === JSON.stringify(b[key]))
  )
}

/** What is written down when a step of a plan was done as it was given; null where the step adds nothing. */
export function additionOf(plan: string, at: number, step: GivenStep, date: string): Addition | null {
  const { amount, strength, basis } = step
  if (amount === undefined || amount.value <= 0) return null
  return {
    id: newId(),
    date,
    product: step.kind === 'dilute' ? 'water' : (step.product ?? 'water'),
    amount: amount.value,
    unit: amount.unit,
    ...(strength === undefined ? {} : { strength }),
    ...(basis === undefined ? {} : { basis }),
    plan,
    step: at,
    note: '',
  }
}
