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

/** The row that speaks for a worksheet where no band judges it; its first worked-out row where none is named here. */
const SPEAKS: Readonly<Record<string, string>> = {
  pool: 'volume',
  saturation: 'lsi',
  stabilizer: 'hocl',
  salt: 'salt_mass',
  dilution: 'drain_fraction',
  ph_alkalinity: 'ph_after',
  calcium: 'calcium_product_mass',
  chlorine: 'chlorine_product_mass',
  generator: 'generator_hours',
  // what was seen at the pool: entries alone
  plan: '',
}

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
  for (const { quantity } of rows) {
    const outcome = book.outcome(baseline, quantity.name)
    if (!hasValue(outcome)) continue
    const { from } = book.source(baseline, quantity.name)
    if (from === 'typed' || from === 'sample') taken++
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
  if (judged > 0) return { text: say('page.rail.in_range'), out: false }
  const speaker = SPEAKS[definition.id] ?? rows.find(({ quantity }) => quantity.formula)?.quantity.name ?? ''
  const spoken = said(book, baseline, speaker)
  if (spoken !== '') return { text: spoken, out: false }
  return { text: taken > 0 ? say('page.rail.entered', { count: taken }) : '', out: false }
}

/** A row with its value, or what it needs; empty where it says nothing yet. */
function said(book: Book, scenario: string, quantity: string): string {
  const outcome = book.outcome(scenario, quantity)
  if (!outcome) return ''
  if (hasValue(outcome)) {
    return `${labelOf(quantity, book.catalog().quantities.get(quantity)?.row)} ${shownValue(book, scenario, quantity)}`
  }
  const { code, facts } = outcome.problem
  return code === 'missing' && Array.isArray(facts.names)
    ? say('page.needs', { names: missingLabels(facts.names.slice(0, 2)) })
    : ''
}
