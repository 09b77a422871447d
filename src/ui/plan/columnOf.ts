import { hasValue } from '../../engine/outcome'
import type { Value } from '../../functions/define'
import type { Column } from '../../planner/bench'
import type { Book } from '../shell/book'

/**
 * What the planner is told of a scenario: every input that has a value, and every assumption. What is worked out from them
 * it works out itself. Null until the engine has answered for all of it: a water half known gives a wrong plan. Tracked.
 */
export function columnOf(book: Pick<Book, 'catalog' | 'outcome' | 'source'>, scenario: string): Column | null {
  const column = new Map<string, Value>()
  for (const { name, formula } of book.catalog().quantities.values()) {
    const outcome = book.outcome(scenario, name)
    if (!outcome) return null
    if (!hasValue(outcome)) continue
    const { from } = book.source(scenario, name)
    if (formula === null || from === 'typed' || from === 'baseline') column.set(name, outcome.value)
  }
  // As the commands take it: an assumed volume is known, so low and high are it too, unless they are assumed as well.
  const volume = column.get('volume')
  return volume === undefined ? column : new Map([['volume_low', volume], ['volume_high', volume], ...column])
}

/** Readings of a scenario that are only a limit of their test: the plan has them tested again, and computes with none. Tracked. */
export function limitsOf(book: Book, scenario: string): ReadonlySet<string> {
  const names = [...book.catalog().quantities.keys()]
  return new Set(names.filter((name) => book.source(scenario, name).cell?.kind === 'limit'))
}
