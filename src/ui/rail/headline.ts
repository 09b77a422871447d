import { hasValue } from '../../engine/outcome'
import { say } from '../../words/say'
import type { Definition } from '../../worksheet/definition'
import { judge } from '../../worksheet/judge'
import { bandIn } from '../grid/bandIn'
import { missingLabels } from '../grid/cellView'
import { groupsOf } from '../grid/gridRow'
import { labelOf } from '../labelOf'
import type { Book } from '../shell/book'
import { shownValue } from '../shownValue'

/** The rows that speak for a worksheet when nothing in it is out of range. */
const SPEAKS: Readonly<Record<string, string>> = { pool: 'volume' }

export interface Headline {
  readonly text: string
  readonly out: boolean
}

/** A worksheet's state in the baseline, in a few words for the contents. */
export function headline(book: Book, definition: Definition): Headline {
  const baseline = book.baseline()
  const rows = groupsOf(definition, book.catalog())
    .flatMap((group) => group.rows)
    .filter(({ quantity }) => quantity.worksheet === definition.id)
  const out: string[] = []
  let judged = 0
  let taken = 0
  let answer = ''
  let missing: readonly string[] = []
  for (const { quantity } of rows) {
    const outcome = book.outcome(baseline, quantity.name)
    if (!outcome) continue
    if (!hasValue(outcome)) {
      const names = outcome.problem.code === 'missing' ? outcome.problem.facts.names : undefined
      if (quantity.formula && Array.isArray(names) && missing.length === 0) missing = names as readonly string[]
      continue
    }
    const { from } = book.source(baseline, quantity.name)
    if (from === 'typed' || from === 'sample') taken++
    if (answer === '' && quantity.formula && quantity.row.range) {
      answer = `${labelOf(quantity.name, quantity.row)} ${shownValue(book, baseline, quantity.name)}`
    }
    const band = bandIn(book, quantity.row, baseline)
    if (!band || typeof outcome.value !== 'number') continue
    judged++
    const side = judge(outcome.value, band)
    if (side !== 'within') out.push(say(`page.rail.${side}`, { name: labelOf(quantity.name, quantity.row) }))
  }
  const [first] = out
  if (first !== undefined) {
    return { text: out.length > 1 ? say('page.rail.and_more', { first, count: out.length - 1 }) : first, out: true }
  }
  const speaker = SPEAKS[definition.id]
  const spoken = speaker === undefined ? '' : shownValue(book, baseline, speaker)
  if (spoken !== '') return { text: spoken, out: false }
  if (judged > 0) return { text: say('page.rail.in_range'), out: false }
  // An answer that no band judges; what an aside of the worksheet still needs is no state of the whole.
  if (answer !== '') return { text: answer, out: false }
  if (missing.length > 0) return { text: say('page.needs', { names: missingLabels(missing.slice(0, 2)) }), out: false }
  return { text: taken > 0 ? say('page.rail.entered', { count: taken }) : '', out: false }
}
