import { isForetold } from '../../notebook/foretold'
import { own } from '../../notebook/own'
import { planOf } from '../../notebook/planLink'
import { say } from '../../words/say'
import type { Book } from '../shell/book'
import { formulas } from '../shell/formulas'
import { unitWords } from '../unitWords'

/** Where the value of an input comes from, in a sentence; with what was typed, where that reads differently. */
export function sourceText(
  book: Pick<Book, 'source' | 'notebook' | 'baseline' | 'unit' | 'catalog'>,
  scenario: string,
  quantity: string,
): string {
  const { from, cell } = book.source(scenario, quantity)
  const notebook = book.notebook()
  const holder = notebook.scenarios[from === 'baseline' ? book.baseline() : scenario]
  const sample = notebook.samples[holder?.sample ?? '']?.name ?? ''
  const entered =
    cell?.kind === 'value' && cell.unit !== book.unit(quantity) ? `${cell.entered} ${unitWords(cell.unit)}` : ''
  const facts = { sample, entered, baseline: notebook.scenarios[book.baseline()]?.name ?? '' }
  const isComputed = book.catalog().quantities.get(quantity)?.formula
  if (from === 'typed' && cell.kind === 'formula') {
    const formula = formulas()?.toShown(cell.text, notebook) ?? cell.text
    return say(isComputed ? 'page.from.assumed_formula' : 'page.from.formula', { formula })
  }
  if (isComputed && from === 'typed') return say('page.from.assumed')
  const plan = from === 'typed' && own(notebook.scenarios, planOf(cell) ?? '')
  if (plan) return say(cell?.kind === 'not_taken' ? 'page.from.plan_nothing' : 'page.from.plan', { name: plan.name })
  if (from === 'lacking' && isForetold(notebook.scenarios[scenario])) return say('page.from.not_foretold')
  return say(`page.from.${from}${entered === '' ? '' : '_as'}`, facts)
}
