import { formatValue } from '../../units/format'
import { say } from '../../words/say'
import type { Band } from '../../worksheet/definition'
import { decimalsOf } from '../decimalsOf'
import { wordOf } from '../grid/cellView'
import { labelOf } from '../labelOf'
import type { Book } from '../shell/book'
import { unitWords } from '../unitWords'

/** Where a band holds, in words. Tracked. */
export function whenWords(book: Book, when: Band['when']): string {
  const conditions = Object.entries(when ?? {})
  if (conditions.length === 0) return say('page.ranges.everywhere')
  return conditions.map(([name, wanted]) => conditionWords(book, name, wanted)).join('; ')
}

function conditionWords(book: Book, name: string, wanted: NonNullable<Band['when']>[string]): string {
  const row = book.catalog().quantities.get(name)?.row
  const quantity = labelOf(name, row)
  if (Array.isArray(wanted)) {
    return say('page.ranges.choice_is', { quantity, choices: wanted.map((id) => wordOf(name, id, row)) })
  }
  const unit = book.unit(name)
  const shown = (value: number | undefined) =>
    value === undefined || !row
      ? ''
      : `${formatValue(value, row.unit, unit, decimalsOf(row))} ${unitWords(unit)}`.trim()
  const facts = { quantity, low: shown(wanted.from), high: shown(wanted.below) }
  if (wanted.below === undefined) return say('page.ranges.span_from', facts)
  return say(wanted.from === undefined ? 'page.ranges.span_below' : 'page.ranges.span_both', facts)
}
