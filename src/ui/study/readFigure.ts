import { parseEntry } from '../../units/parseEntry'
import { locale } from '../../words/locale'
import { isProblem, problem } from '../../words/problem'
import type { Book } from '../shell/book'
import { axisOf } from './axis'
import type { Entered } from './entered'

/** What a person wrote into a field for one value of a quantity: in the reader's unit, or in the unit behind the figure. */
export function readFigure(book: Book, quantity: string, text: string): Entered {
  const { canonical, unit, label } = axisOf(book, quantity)
  const entry = parseEntry(text, canonical, { profile: book.notebook().profile, displayed: unit, quantity })
  if (entry === null) return null
  if (entry === 'not_taken')
    return { text, why: problem('unreadable_number', [label], { found: '-', decimal: locale().decimal }) }
  return isProblem(entry) ? { text, why: { ...entry, path: [label] } } : entry.canonical
}
