import { hasValue } from '../../engine/outcome'
import type { Value } from '../../functions/define'
import type { Column } from '../../study/evaluate'
import { restsOn } from '../../study/restsOn'
import { isProblem } from '../../words/problem'
import { isScenario, nameKey } from '../../worksheet/nameKey'
import { parseFormula } from '../../worksheet/parse'
import { visit } from '../../worksheet/visit'
import { columnOf } from '../plan/columnOf'
import type { Book } from '../shell/book'

/**
 * A scenario as a column that stands alone: its inputs and assumptions, and the rows that read another scenario as they are now,
 * since a column knows of no other. Null until the engine has answered for all of it. Tracked.
 */
export function studyColumn(book: Book, scenario: string): Column | null {
  const column = columnOf(book, scenario)
  if (column === null) return null
  const given = new Map<string, Value>(column)
  for (const name of ownRows(book)) {
    const outcome = book.outcome(scenario, name)
    const formula = book.catalog().quantities.get(name)?.formula
    if (formula && hasValue(outcome) && namesIn(formula.text).elsewhere) given.set(name, outcome.value)
  }
  return given
}

/**
 * What stays as it is in such a column though it would follow `input` in the notebook: cells in which a formula is typed, and rows
 * that read other scenarios. Of those that `output` rests on. Tracked.
 */
export function heldIn(book: Book, scenario: string, input: string, output: string): readonly string[] {
  const catalog = book.catalog()
  const own = new Set(ownRows(book))
  return [...restsOn(catalog, output)].filter((name) => {
    if (name === input) return false
    const { cell } = book.source(scenario, name)
    const text =
      cell?.kind === 'formula' ? cell.text : own.has(name) ? catalog.quantities.get(name)?.formula?.text : undefined
    if (text === undefined) return false
    const { here, elsewhere } = namesIn(text)
    if (cell?.kind !== 'formula' && !elsewhere) return false
    return here.some((read) => restsOn(catalog, read).has(input))
  })
}

/** Rows of the reader's own: none that ships reads another scenario. */
function ownRows(book: Book): readonly string[] {
  const { rows, worksheets } = book.notebook()
  const named = Object.values(rows).map(({ row }) => row.name)
  if (Object.keys(worksheets).length === 0) return named
  const brought = [...book.catalog().quantities.values()].filter(({ worksheet }) =>
    Object.hasOwn(worksheets, worksheet),
  )
  return [...named, ...brought.map(({ name }) => name)]
}

const known = new Map<string, Named>()
interface Named {
  /** quantities of the same scenario */
  readonly here: readonly string[]
  readonly elsewhere: boolean
}

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
