import { hasValue } from '../../engine/outcome'
import type { Chart } from '../../notebook/notebook'
import { restsOn } from '../../study/restsOn'
import { hasWords, say } from '../../words/say'
import { labelOf } from '../labelOf'
import type { Book } from '../shell/book'
import { inShort, usualSpan } from './span'

export type SweepChart = Extract<Chart, { readonly kind: 'sweep' }>

/** Points of a chart where nobody says how many. */
export const USUAL_POINTS = 61

/** More scenarios than this are not all drawn unless they are asked for: lines that nobody can tell apart. */
const MANY = 8

function usualScenarios(book: Book): readonly string[] {
  const all = book.scenarios()
  return all.length > MANY ? all.slice(0, MANY) : []
}

/** The charts that come with the worksheets, under ids that none of the notebook's own has: `saturation/ph`. */
export function givenCharts(book: Book): readonly SweepChart[] {
  return book.catalog().worksheets.flatMap(({ id: worksheet, charts }) =>
    (charts ?? []).map(({ id, label, input, from, to, outputs }): SweepChart => {
      const against = chartAgainst(book, outputs, input)
      const key = `chart.${worksheet}.${id}`
      // a copy of a shipped worksheet has its charts, and neither a label nor words of its own
      const name = label ?? (hasWords(key) ? say(key) : against.name)
      const row = book.catalog().quantities.get(input)?.row
      const [low, high] = row ? inShort([from, to], row, book.unit(input)) : [from, to]
      return { ...against, id: `${worksheet}/${id}`, name, from: low, to: high }
    }),
  )
}

/** A chart of these quantities against that input, under a name made of both. */
export function chartAgainst(book: Book, outputs: readonly string[], input: string): SweepChart {
  const rowOf = (name: string) => book.catalog().quantities.get(name)?.row
  const row = rowOf(input)
  const [from, to] = usualSpan(row, book.unit(input))
  const [output = ''] = outputs
  const name = say('page.study.new_name', { output: labelOf(output, rowOf(output)), input: labelOf(input, row) })
  return {
    kind: 'sweep',
    id: '',
    name,
    input,
    from,
    to,
    points: USUAL_POINTS,
    outputs,
    scenarios: usualScenarios(book),
  }
}

/** What the selected cell suggests: a result against the first reading behind it, a reading against a result that uses it. */
export function chartOfSelection(book: Book): SweepChart | undefined {
  const selected = book.selection.cell()
  if (!selected) return undefined
  const { quantity } = selected.row
  if (quantity.row.unit === 'choice' || quantity.row.unit === 'truth') return undefined
  if (quantity.formula) {
    const input = inputsBehind(book, quantity.name, selected.scenario)[0]
    return input === undefined ? undefined : chartAgainst(book, [quantity.name], input)
  }
  const user = quantity.readBy.find((name) => isNumber(book, name))
  return user === undefined ? undefined : chartAgainst(book, [user], quantity.name)
}

/** The number inputs that a quantity hangs on, those that this scenario has a value of first. */
export function inputsBehind(book: Book, quantity: string, scenario: string): readonly string[] {
  const inputs = [...restsOn(book.catalog(), quantity)].filter((name) => {
    const row = book.catalog().quantities.get(name)?.row
    return row !== undefined && 'accept' in row && name !== quantity
  })
  const taken = inputs.filter((name) => hasValue(book.outcome(scenario, name)))
  return [...taken, ...inputs.filter((name) => !taken.includes(name))]
}

function isNumber(book: Book, quantity: string): boolean {
  const unit = book.catalog().quantities.get(quantity)?.row.unit
  return unit !== undefined && unit !== 'choice' && unit !== 'truth'
}
