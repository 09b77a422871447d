import { hasValue } from '../../engine/outcome'
import type { Value } from '../../functions/define'
import type { Column } from '../../study/evaluate'
import { restsOn } from '../../study/restsOn'
import { isProblem } from '../../words/problem'
import type { Outline } from '../../worksheet/catalog'
import { isScenario, nameKey } from '../../worksheet/nameKey'
import { parseFormula } from '../../worksheet/parse'
import { shippedOutline } from '../../worksheet/shippedOutline'
import { visit } from '../../worksheet/visit'
import type { Book } from '../shell/book'

/**
 * A scenario as a column that stands alone, as far as these outputs rest on it: inputs and assumptions, and the rows that read
 * another scenario as they are now, since a column knows of no other. Null until the engine has answered for all of it. Tracked.
 */
export function studyColumn(book: Book, scenario: string, outputs: readonly string[]): Column | null {
  const catalog = book.catalog()
  const column = new Map<string, Value>()
  for (const name of behind(catalog, outputs)) {
    const quantity = catalog.quantities.get(name)
    const outcome = book.outcome(scenario, name)
    if (!quantity || !outcome) return null
    if (!hasValue(outcome)) continue
    const { from } = book.source(scenario, name)
    if (quantity.formula === null || from === 'typed' || from === 'baseline' || readsElsewhere(catalog, name))
      column.set(name, outcome.value)
  }
  return column
}

/**
 * What stays as it is in such a column though it would follow `input` in the notebook: cells in which a formula is typed, and rows
 * that read other scenarios. Of those that `output` rests on. Tracked.
 */
export function heldIn(book: Book, scenario: string, input: string, output: string): readonly string[] {
  const catalog = book.catalog()
  return [...restsOn(catalog, output)].filter((name) => {
    const text = name === input ? undefined : heldFormula(book, scenario, name)
    return text !== undefined && namesIn(text).here.some((read) => restsOn(catalog, read).has(input))
  })
}

/** The formula typed in a cell, or that of a row that reads another scenario: a column takes only what it gives now. Tracked. */
export function heldFormula(book: Book, scenario: string, name: string): string | undefined {
  const { cell } = book.source(scenario, name)
  if (cell?.kind === 'formula') return cell.text
  return readsElsewhere(book.catalog(), name) ? book.catalog().quantities.get(name)?.formula?.text : undefined
}

function behind(catalog: Outline, outputs: readonly string[]): ReadonlySet<string> {
  return new Set(outputs.flatMap((output) => [...restsOn(catalog, output)]))
}

/** Only a row of the reader's own does: none that ships reads another scenario. */
function readsElsewhere(catalog: Outline, name: string): boolean {
  const text = catalog.quantities.get(name)?.formula?.text
  return text !== undefined && !shippedOutline().quantities.has(name) && namesIn(text).elsewhere
}

interface Named {
  /** quantities of the same scenario */
  readonly here: readonly string[]
  readonly elsewhere: boolean
}
const known = new Map<string, Named>()

function namesIn(text: string): Named {
  const before = known.get(text)
  if (before) return before
  const here: string[] = []
  let elsewhere = false
  const formula = parseFormula(text)
  if (!isProblem(formula))
    visit(formula.tree, (node) => {
      if (node.kind !== 'name') return
      if (isScenario(node)) elsewhere = true
      else here.push(nameKey(node))
    })
  const named = { here, elsewhere }
  known.set(text, named)
  return named
}
