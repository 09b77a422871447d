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
  readonly quantity: string
  readonly text: string
  /** out of its band; else a question or a note */
  readonly out: boolean
  /** the scenarios that it holds for, by id */
  readonly scenarios: readonly string[]
}

/** What stands out in a row, over all scenarios: out of its band, assumed, unlikely, in disagreement with another. */
export function findingsOf(book: Book, { quantity }: GridRow): readonly Finding[] {
  const { name, row } = quantity
  const found = new Map<string, { out: boolean; scenarios: string[] }>()
  const add = (text: string, out: boolean, scenario: string) => {
    const known = found.get(text)
    if (known) known.scenarios.push(scenario)
    else found.set(text, { out, scenarios: [scenario] })
  }
  for (const scenario of book.scenarios()) {
    const outcome = book.outcome(scenario, name)
    if (!hasValue(outcome)) continue
    if (quantity.formula && book.source(scenario, name).from === 'typed') {
      add(say('page.assumed', { name: labelOf(name, row) }), false, scenario)
    }
    for (const notice of noticesOf(row, outcome)) {
      if (notice === `unlikely:${name}` || notice.startsWith('disagree:')) add(noticeText(notice), false, scenario)
    }
    if (!row.target || typeof outcome.value !== 'number') continue
    const band = bandIn(book, row, scenario)
    const side = band ? judge(outcome.value, band) : 'within'
    if (band && side !== 'within') add(verdict(name, side, band, book), true, scenario)
  }
  return [...found].map(([text, { out, scenarios }]) => ({ quantity: name, text, out, scenarios }))
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
