import { batch, createMemo, createSignal, onCleanup, untrack } from 'solid-js'
import type { Change } from '../../engine/client'
import { createEngineClient } from '../../engine/connect'
import type { Outcome } from '../../engine/outcome'
import { apply } from '../../notebook/apply'
import { checkEdit } from '../../notebook/checkEdit'
import type { Edit } from '../../notebook/edit'
import { createHistory, redo, remember, undo } from '../../notebook/history'
import { cellKey, type Notebook } from '../../notebook/notebook'
import { own } from '../../notebook/own'
import { resolve } from '../../notebook/resolve'
import { displayUnit } from '../../units/profile'
import { isProblem, type Problem, problem } from '../../words/problem'
import { sentence } from '../../words/say'
import { rowsOf } from '../grid/gridRow'
import { announce } from './announce'
import type { Book } from './book'
import { catalogOf } from './catalogOf'
import { createCells } from './cells'
import { formulas, ON_THEIR_WAY, prepareFormulas } from './formulas'
import { createInflow } from './inflow'
import { createParts } from './parts'
import { createSaver } from './saving'
import { createSelection } from './selection'
import { touched } from './touched'

/** In good time for the first formula that is typed, and out of the way of the first numbers; milliseconds. */
const FORMULAS_AFTER = 3000

/** Where edits are kept: resolves when they are on the disk. */
export type Append = (edits: readonly Edit[]) => Promise<undefined | Problem>

/**
 * An open notebook. Every edit goes one way: checked, applied, remembered for undo, sent to the engine and to the store;
 * the cells that changed redraw. `append` null: it is not kept anywhere.
 */
export function createBook(first: Notebook, append: Append | null, writable: () => boolean): Book {
  const [notebook, setNotebook] = createSignal(first)
  const [history, setHistory] = createSignal(createHistory())
  const [engineTrouble, setEngineTrouble] = createSignal<Problem | null>(null)
  const outcomes = createCells<Outcome>()
  const sources = createCells<true>()

  const parts = createParts(first)
  const withOwn = createMemo(() => catalogOf(parts.worksheets()))
  const catalog = createMemo(() => withOwn().catalog)
  const baseline = createMemo(() => parts.order()[0] ?? '')
  const rows = createMemo(() => rowsOf(catalog()))

  const selection = createSelection(rows, parts.order)

  const saver = append ? createSaver(append) : null
  const engine = createEngineClient()
  engine.onRestart((why, changes) => {
    setEngineTrouble(why)
    receive(changes)
  })
  void engine.open(first).then(receive)
  onCleanup(() => engine.close())
  const later = setTimeout(prepareFormulas, FORMULAS_AFTER)
  onCleanup(() => clearTimeout(later))

  const inflow = createInflow<Change>(({ scenario, quantity, outcome }) => {
    outcomes.write(cellKey(scenario, quantity), outcome)
  })

  /** Row by row, the rows of the worksheet in use before the others. */
  function receive(changes: readonly Change[]): void {
    const here = untrack(selection.cell)?.row.worksheet
    const rank = new Map<string, number>()
    untrack(rows).forEach(({ worksheet, quantity }, index) => {
      const near = worksheet === here ? index - 100_000 : index
      rank.set(quantity.name, Math.min(rank.get(quantity.name) ?? near, near))
    })
    const placed = changes.map((change) => ({ change, at: rank.get(change.quantity) ?? 0 }))
    inflow.put(placed.sort((a, b) => a.at - b.at).map(({ change }) => change))
  }

  /** Takes an edit in, whoever made it; the caller keeps the history. */
  function take(edit: Edit, next: Notebook): void {
    // First, so that the worker computes while the page redraws what was entered.
    const answer = engine.edit([edit])
    batch(() => {
      setNotebook(next)
      parts.follow(next)
      const cells = touched(edit, untrack(parts.order))
      if (cells === 'all') sources.clear()
      else for (const key of cells) sources.write(key, true)
    })
    saver?.put([edit])
    void answer.then(receive)
  }

  function dispatch(edit: Edit): Problem | null {
    if (!untrack(writable)) return problem('read_only')
    const before = untrack(notebook)
    const refused = checkEdit(before, edit, untrack(catalog), formulas()?.check ?? (() => ON_THEIR_WAY))
    if (refused) return refused
    const applied = apply(before, edit)
    if (isProblem(applied)) return applied
    setHistory((now) => remember(now, edit, applied))
    take(edit, applied.notebook)
    return null
  }

  function step(turn: typeof undo): void {
    if (!untrack(writable)) return
    const turned = turn(untrack(history))
    if (!turned) return
    const applied = apply(untrack(notebook), turned.edit)
    if (isProblem(applied)) {
      announce(sentence(applied))
      return
    }
    setHistory(turned.history)
    take(turned.edit, applied.notebook)
  }

  return {
    notebook,
    catalog,
    refusedWorksheets: () => withOwn().refused,
    scenarios: parts.order,
    baseline,
    scenario: (id) => own(parts.scenarios(), id),
    sample: (id) => own(parts.samples(), id),
    rows,
    outcome: (scenario, quantity) => outcomes.read(cellKey(scenario, quantity)),
    source(scenario, quantity) {
      sources.read(cellKey(scenario, quantity))
      return resolve(untrack(notebook), catalog(), scenario, quantity)
    },
    unit(quantity) {
      const chosen = own(parts.units(), quantity)
      return chosen ?? displayUnit(catalog().quantities.get(quantity)?.row.unit ?? '1', parts.profile())
    },
    dispatch,
    undo: () => step(undo),
    redo: () => step(redo),
    canUndo: () => history().past.length > 0,
    canRedo: () => history().future.length > 0,
    saving: () => saver?.saving() ?? { state: 'not_kept' },
    saveAgain: () => saver?.again(),
    settled: () => saver?.settled() ?? Promise.resolve(),
    writable,
    engineTrouble,
    selection,
  }
}
