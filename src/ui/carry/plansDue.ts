import { createSignal } from 'solid-js'
import { cellKey } from '../../notebook/notebook'
import { planOf } from '../../notebook/planLink'
import type { Book } from '../shell/book'

const [due, setDue] = createSignal<ReadonlySet<string>>(new Set())

/** Whether a scenario follows a plan that is being made anew, and still has the end of the one before. Tracked. */
export function awaitsPlan(book: Pick<Book, 'notebook'>, scenario: string): boolean {
  const now = due()
  if (now.size === 0) return false
  return Object.entries(book.notebook().cells).some(
    ([key, cell]) => key.startsWith(cellKey(scenario, '')) && now.has(planOf(cell) ?? ''),
  )
}

/** Says whether the plan of a scenario that others follow is being made anew. */
export function setPlanDue(scenario: string, is: boolean): void {
  if (due().has(scenario) === is) return
  const next = new Set(due())
  if (is) next.add(scenario)
  else next.delete(scenario)
  setDue(next)
}
