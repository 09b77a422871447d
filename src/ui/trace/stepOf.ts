import { LOCKED, lockedFunction } from '../../functions/registry'
import { readsOfCell } from '../../notebook/cellGraph'
import type { CellPlace } from '../../notebook/cellPlace'
import { toShown } from '../../notebook/formulaNames'
import { planOf } from '../../notebook/planLink'
import { isProblem } from '../../words/problem'
import { say } from '../../words/say'
import { callsOf } from '../../worksheet/callsOf'
import { parseFormula } from '../../worksheet/parse'
import { sourceText } from '../margin/sourceText'
import { noticeText } from '../noticeText'
import type { Book } from '../shell/book'
import { formulaWithNumbers } from './formulaWithNumbers'
import { readingNotes } from './readingNotes'

/** How one value came about. */
export interface Step {
  /** where it comes from, a sentence each */
  readonly notes: readonly string[]
  /** the kept lab file that it was read from, by id */
  readonly file: string | null
  /** the scenario whose step plan it follows; null where it follows none */
  readonly plan: string | null
  /** the formula as people write it; null for what is entered or followed */
  readonly formula: string | null
  /** with the numbers put in */
  readonly numbers: string | null
  /** the locked functions that it calls, with version and source */
  readonly functions: readonly { readonly name: string; readonly version: number; readonly source: string }[]
  /** where the row itself is from: the source that its worksheet names */
  readonly source: string
  /** the cells that it reads */
  readonly reads: readonly CellPlace[]
}

const REGISTRY = new Map(LOCKED.map((f) => [f.name, f]))

/** The step behind a cell. Tracked: it is another when the notebook or a value in it is. */
export function stepOf(book: Book, place: CellPlace): Step {
  const { scenario, quantity } = place
  const catalog = book.catalog()
  const known = catalog.quantities.get(quantity)
  const source = book.source(scenario, quantity)
  const own = source.cell === null || source.from === 'baseline' ? null : source.cell
  const text = own?.kind === 'formula' ? own.text : source.cell === null ? (known?.formula?.text ?? null) : null
  const sample = book.sample(book.scenario(scenario)?.sample ?? '')
  const followed = source.from === 'none' && known?.formula
  const notices = book.outcome(scenario, quantity)?.notices ?? []
  return {
    notes: [
      ...(followed || source.from === 'sample' ? [] : [sourceText(book, scenario, quantity)]),
      ...(source.from === 'typed' || source.from === 'sample' ? readingNotes(source, quantity, sample) : []),
      ...notices.map((notice) => noticeText(notice)),
    ],
    file: (source.from === 'sample' && sample?.origin?.import) || null,
    plan: source.cell === null ? null : planOf(source.cell),
    formula: text === null ? null : toShown(text, book.notebook()),
    numbers:
      text === null ? null : formulaWithNumbers(text, catalog, (of, name) => book.outcome(scenarioNamed(of), name)),
    functions: text === null ? [] : functionsOf(text),
    source: own === null ? (known?.row.source ?? '') : '',
    reads: readsOfCell(book.notebook(), catalog, place),
  }

  function scenarioNamed(of: string | null): string {
    if (of === null) return scenario
    return of === 'baseline' ? book.baseline() : of
  }

  function functionsOf(formula: string): Step['functions'] {
    const parsed = parseFormula(formula)
    const calls = isProblem(parsed) ? [] : callsOf(parsed.tree, catalog.solves, REGISTRY)
    return calls.flatMap((name) => {
      const f = lockedFunction(name)
      return f ? [{ name, version: f.version, source: f.source }] : []
    })
  }
}

/** A cell named in words: in another scenario than the one before it with that scenario's name. */
export function placeText(label: string, scenario: string | undefined): string {
  return scenario === undefined ? label : say('formula.in_scenario', { name: label, scenario })
}
