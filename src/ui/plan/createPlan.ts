import { type Accessor, createComputed, createEffect, createSignal, on, onCleanup } from 'solid-js'
import type { Column } from '../../planner/bench'
import type { Shelf } from '../../planner/shelf'
import type { Plan } from '../../planner/step'
import type { PlanAsked, PlanMade } from './planWorker'

/** What is known of the plan: still being made, made, or impossible. */
export type Planned = Plan | 'making' | 'none'

/** Readings come one by one; a plan is made when they rest for this long, in milliseconds. */
const REST = 250

/**
 * The plan for a scenario's water, made in a worker and made again when the water changes. The last one stands until then,
 * but never that of another scenario.
 */
export function createPlan(
  scenario: Accessor<string>,
  column: Accessor<Column | null>,
  shelf: Accessor<Shelf>,
  censored: Accessor<ReadonlySet<string>>,
): Accessor<Planned> {
  const [planned, setPlanned] = createSignal<Planned>('making')
  const worker = new Worker(new URL('./planWorker.ts', import.meta.url), { type: 'module', name: 'planner' })
  let asked = 0
  worker.onmessage = ({ data }: MessageEvent<PlanMade>) => {
    if (data.id === asked) setPlanned(data.plan ?? 'none')
  }
  worker.onerror = () => setPlanned('none')

  createComputed(
    on(scenario, () => {
      asked += 1
      setPlanned('making')
    }),
  )
  createEffect(() => {
    const [water, onHand, limits] = [column(), shelf(), censored()]
    if (water === null) return
    const timer = setTimeout(() => {
      asked += 1
      worker.postMessage({ id: asked, column: water, shelf: onHand, censored: limits } satisfies PlanAsked)
    }, REST)
    onCleanup(() => clearTimeout(timer))
  })
  onCleanup(() => worker.terminate())
  return planned
}
