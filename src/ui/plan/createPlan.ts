import { type Accessor, batch, createComputed, createEffect, createMemo, createSignal, on, onCleanup } from 'solid-js'
import type { Column } from '../../planner/bench'
import type { CaseLine } from '../../planner/cases/planWithCases'
import type { Plan } from '../../planner/step'
import type { Problem } from '../../words/problem'
import type { Book } from '../shell/book'
import { sameList } from '../shell/sameList'
import { columnOf, limitsOf } from './columnOf'
import { openPlanner } from './planner'
import { onHand, soundSets } from './planParts'

/** What is known of the plan: still being made, made, or impossible. */
export type Planned = Plan | 'making' | 'none'

export interface PlanOfBook {
  readonly planned: Accessor<Planned>
  /** whether it is still that of an earlier water, shelf or rule, and another is on its way */
  readonly due: Accessor<boolean>
  /** the water that it is made for; null until all of it is known */
  readonly column: Accessor<Column | null>
  /** how each case stands in that water */
  readonly cases: Accessor<readonly CaseLine[]>
  /** what of the notebook's own cases and values of rules does not hold, and why */
  readonly refused: Accessor<readonly Problem[]>
}

/** Readings come one by one; a plan is made when they rest for this long, in milliseconds. */
const REST = 250

/**
 * The plan for a scenario's water, made in a worker and made again when the water, the shelf, the cases or the rules change.
 * The last one stands until then, but never that of another scenario.
 */
export function createPlan(book: Book, scenario: Accessor<string>): PlanOfBook {
  const [planned, setPlanned] = createSignal<Planned>('making')
  const [due, setDue] = createSignal(true)
  const [cases, setCases] = createSignal<readonly CaseLine[]>([])
  const [refused, setRefused] = createSignal<readonly Problem[]>([])
  const column = createMemo(() => columnOf(book, scenario()), null, { equals: sameColumn })
  const limits = createMemo(() => limitsOf(book, scenario()), new Set<string>(), { equals: sameSet })
  const own = createMemo(() => soundSets(book, book.notebook().worksheets), [], { equals: sameList })
  const parts = createMemo(
    () => {
      const { shelf, cases, rules, profile } = book.notebook()
      return [shelf, cases, rules, profile] as const
    },
    undefined,
    { equals: sameList },
  )
  const picked = createMemo(() => book.scenario(scenario())?.cases)
  const planner = openPlanner()
  let asked = 0

  createComputed(
    on(scenario, () => {
      asked += 1
      setPlanned('making')
    }),
  )
  createEffect(() => {
    const water = column()
    const [shelf, cases, rules, profile] = parts()
    const [censored, sets] = [limits(), own()]
    const chosen = picked() ?? []
    scenario()
    const turn = ++asked
    setDue(true)
    if (water === null) return
    const timer = setTimeout(async () => {
      const made = await planner.ask({
        column: water,
        shelf: onHand(shelf),
        censored,
        cases,
        chosen,
        sets,
        rules,
        profile,
      })
      if (turn !== asked) return
      batch(() => {
        setCases(made?.cases ?? [])
        setRefused(made?.refused ?? [])
        setPlanned(made?.plan ?? 'none')
        setDue(false)
      })
    }, REST)
    onCleanup(() => clearTimeout(timer))
  })
  onCleanup(() => planner.close())
  return { planned, due, column, cases, refused }
}

function sameColumn(a: Column | null, b: Column | null): boolean {
  if (a === null || b === null) return a === b
  return a.size === b.size && [...a].every(([name, value]) => b.get(name) === value)
}

function sameSet(a: ReadonlySet<string>, b: ReadonlySet<string>): boolean {
  return a.size === b.size && [...a].every((one) => b.has(one))
}
