import { hasValue } from '../../engine/outcome'
import { hasWords, say } from '../../words/say'
import type { Band } from '../../worksheet/definition'
import type { Side } from '../../worksheet/judge'
import { judge } from '../../worksheet/judge'
import { labelOf } from '../labelOf'
import { noticeText } from '../noticeText'
import type { Book } from '../shell/book'
import { bandIn } from './bandIn'
import type { GridRow } from './gridRow'
import { noticesOf } from './noticesOf'

export interface Finding {
  readonly text: string
  /** out of its band; else a question or a note */
  readonly out: boolean
  /** the scenarios that it holds for, by id */
  readonly scenarios: readonly string[]
}

/** What stands out in these rows, over all scenarios: what is out of its band, and readings that look unlikely. */
export function findingsOf(book: Book, rows: readonly GridRow[]): readonly Finding[] {
  const found = new Map<string, { out: boolean; scenarios: string[] }>()
  const add = (text: string, out: boolean, scenario: string) => {
    const known = found.get(text)
    if (known) known.scenarios.push(scenario)
    else found.set(text, { out, scenarios: [scenario] })
  }
  for (const { quantity } of rows) {
    for (const scenario of book.scenarios()) {
      const outcome = book.outcome(scenario, quantity.name)
      if (!hasValue(outcome)) continue
      if (quantity.formula && book.source(scenario, quantity.name).from === 'typed') {
        add(say('page.assumed', { name: labelOf(quantity.name, quantity.row) }), false, scenario)
      }
      for (const notice of noticesOf(quantity.row, outcome)) {
        if (notice === `unlikely:${quantity.name}` || notice.startsWith('disagree:'))
          add(noticeText(notice), false, scenario)
      }
      if (!quantity.row.target || typeof outcome.value !== 'number') continue
      const band = bandIn(book, quantity.row, scenario)
      const side = band ? judge(outcome.value, band) : 'within'
      if (band && side !== 'within') add(verdict(quantity.name, side, band, book), true, scenario)
    }
  }
  return [...found].map(([text, { out, scenarios }]) => ({ text, out, scenarios }))
}

/** What a value on this side of its band means, in a sentence. */
export function verdict(quantity: string, side: Side, band: Band, book: Book): string {
  const key = `verdict.${quantity}.${side}`
  const row = book.catalog().quantities.get(quantity)?.row
  return hasWords(key) ? say(key) : say(`page.verdict.${side}`, { name: labelOf(quantity, row), ...limits(band) })
}

function limits(band: Band): Record<string, number> {
  return { ...(band.low !== undefined && { low: band.low }), ...(band.high !== undefined && { high: band.high }) }
}
