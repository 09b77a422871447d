import type { Gap } from '../../study/sweep'
import { say } from '../../words/say'
import type { Band } from '../../worksheet/definition'
import { decimalsOf } from '../decimalsOf'
import { bandIn } from '../grid/bandIn'
import { spanText } from '../margin/spanText'
import type { Book } from '../shell/book'
import { type Axis, axisOf } from './axis'
import type { Answered } from './createStudied'

/** One scenario in a panel; values in canonical units. */
export interface Curve {
  readonly scenario: string
  readonly name: string
  readonly pen: number
  readonly values: readonly (number | null)[]
  readonly gaps: readonly Gap[]
  readonly now: { readonly at: number; readonly value: number } | null
}

export interface Panel {
  readonly axis: Axis
  readonly band: Band | undefined
  /** what is said of the band: `wanted 7.2 to 7.8` */
  readonly wanted: string
  readonly curves: readonly Curve[]
}

/** A sweep as it is looked at. */
export interface SweepModel {
  readonly title: string
  readonly input: Axis
  readonly at: readonly number[]
  readonly panels: readonly Panel[]
}

/** @param scenarios those of the order's columns, in their order. Tracked. */
export function sweepModel(
  book: Book,
  title: string,
  scenarios: readonly string[],
  { order, result }: Answered<'sweep'>,
): SweepModel {
  return {
    title,
    input: axisOf(book, order.input),
    at: order.values,
    panels: order.outputs.map((output) => {
      const row = book.catalog().quantities.get(output)?.row
      const bands = scenarios.map((scenario) => row && bandIn(book, row, scenario))
      const alike = bands.every((band) => band?.low === bands[0]?.low && band?.high === bands[0]?.high)
      const first = book.scenario(scenarios[0] ?? '')?.name ?? ''
      const axis = axisOf(book, output)
      const [band] = bands
      const span = row ? spanText(band?.low, band?.high, row.unit, axis.unit, decimalsOf(row)) : ''
      return {
        axis,
        band,
        wanted: alike ? say('page.study.wanted', { span }) : say('page.study.wanted_in', { scenario: first, span }),
        curves: result
          .filter((line) => line.output === output)
          .map(({ column, values, gaps, now }) => {
            const scenario = scenarios[column] ?? ''
            return { scenario, name: book.scenario(scenario)?.name ?? '', pen: column, values, gaps, now }
          }),
      }
    }),
  }
}
