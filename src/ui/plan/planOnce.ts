import type { Plan } from '../../planner/step'
import type { Book } from '../shell/book'
import { columnOf, limitsOf } from './columnOf'
import { openPlanner } from './planner'
import { onHand, soundSets } from './planParts'

/** The plan for a scenario's water as it is when every edit so far has been answered; null where none can be made. */
export async function planOnce(book: Book, scenario: string): Promise<Plan | null> {
  const outcome = await book.answered()
  const column = columnOf({ ...book, outcome }, scenario)
  if (column === null) return null
  const { shelf, cases, rules, profile, worksheets } = book.notebook()
  const planner = openPlanner()
  const made = await planner.ask({
    column,
    shelf: onHand(shelf),
    censored: limitsOf(book, scenario),
    cases,
    chosen: book.scenario(scenario)?.cases ?? [],
    sets: soundSets(book, worksheets),
    rules,
    profile,
  })
  planner.close()
  return made?.plan ?? null
}
