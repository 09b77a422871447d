import { createSignal } from 'solid-js'
import type { Notebook } from '../../notebook/notebook'
import { planOf } from '../../notebook/planLink'
import type { Problem } from '../../words/problem'
import { afterDrawing } from '../shell/afterDrawing'
import type { Book } from '../shell/book'

/** What keeps a plan that is followed from being so: it is being made anew, or what it ends with cannot be taken over. */
export type PlanState = 'due' | Problem

const [states, setStates] = createSignal<ReadonlyMap<string, PlanState>>(new Map())

/** @param plan the scenario whose plan it is; @param state null when what follows it stands where it ends */
export function setPlanState(plan: string, state: PlanState | null): void {
  if ((states().get(plan) ?? null) === state) return
  const next = new Map(states())
  if (state === null) next.delete(plan)
  else next.set(plan, state)
  setStates(next)
}

/** Why a scenario does not stand where the plans that it follows end, directly or through others; null when it does. Tracked. */
export function planStateOf(book: Pick<Book, 'notebook'>, scenario: string): PlanState | null {
  const now = states()
  if (now.size === 0) return null
  const follows = plansByScenario(book.notebook())
  const seen = new Set([scenario])
  for (const one of seen) {
    for (const plan of follows.get(one) ?? []) {
      const state = now.get(plan)
      if (state !== undefined) return state
      seen.add(plan)
    }
  }
  return null
}

/** No longer than this is waited for plans; milliseconds. */
const LONGEST = 10_000

/** Resolves when no plan that is followed is being made; one that the last edit makes due may not have begun yet. */
export async function plansAtRest(book: Book): Promise<void> {
  const start = performance.now()
  await book.answered()
  while ([...states().values()].includes('due') && performance.now() - start < LONGEST) await drawn()
}

function drawn(): Promise<void> {
  return new Promise((resolve) => afterDrawing(resolve))
}

let known: { readonly cells: Notebook['cells']; readonly plans: ReadonlyMap<string, ReadonlySet<string>> } | undefined

/** The scenarios whose plans each scenario follows. */
function plansByScenario({ cells }: Notebook): ReadonlyMap<string, ReadonlySet<string>> {
  if (known?.cells === cells) return known.plans
  const plans = new Map<string, Set<string>>()
  for (const [key, cell] of Object.entries(cells)) {
    const plan = planOf(cell)
    if (plan === null) continue
    const scenario = key.slice(0, key.indexOf('/'))
    const of = plans.get(scenario) ?? new Set()
    plans.set(scenario, of.add(plan))
  }
  known = { cells, plans }
  return plans
}
