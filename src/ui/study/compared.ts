import { hasValue } from '../../engine/outcome'
import { say } from '../../words/say'
import type { Band } from '../../worksheet/definition'
import { judge } from '../../worksheet/judge'
import { bandIn } from '../grid/bandIn'
import type { Book } from '../shell/book'
import { type Axis, axisOf } from './axis'

/** One quantity in all scenarios as they are; values in its canonical unit. */
export interface Compared {
  readonly axis: Axis
  readonly rows: readonly {
    readonly name: string
    /** null where there is no answer */
    readonly value: number | null
    /** the figure, with what it is against the band: status is never a colour alone */
    readonly says: string
    readonly band: Band | undefined
    readonly out: boolean
  }[]
}

/** Tracked. */
export function compared(book: Book, scenarios: readonly string[], quantity: string): Compared {
  const axis = axisOf(book, quantity)
  const row = book.catalog().quantities.get(quantity)?.row
  return {
    axis,
    rows: scenarios.map((scenario) => {
      const outcome = book.outcome(scenario, quantity)
      const value = hasValue(outcome) && typeof outcome.value === 'number' ? outcome.value : null
      const band = row && bandIn(book, row, scenario)
      const side = value !== null && band ? judge(value, band) : 'within'
      const figure = value === null ? say('page.study.no_answer') : axis.figure(value)
      const says = side === 'within' ? figure : say(`page.study.side.${side}`, { value: figure })
      return { name: book.scenario(scenario)?.name ?? '', value, says, band, out: side !== 'within' }
    }),
  }
}
