import { batch, createMemo, createSignal, onCleanup, untrack } from 'solid-js'
import type { Change } from '../../engine/client'
import { createEngineClient } from '../../engine/connect'
import type { Outcome } from '../../engine/outcome'
import { apply } from '../../notebook/apply'
import { checkEdit } from '../../notebook/checkEdit'
import type { Edit } from '../../notebook/edit'
import { createHistory, type History, redo, remember, undo } from '../../notebook/history'
import { cellKey, type Notebook } from '../../notebook/notebook'
import { own } from '../../notebook/own'
import { readsOthers } from '../../notebook/planLink'
import { resolve } from '../../notebook/resolve'
import { prepareKeeping } from '../../storage/prepareKeeping'
import { displayUnit } from '../../units/profile'
import { isProblem, type Problem, problem } from '../../words/problem'
import { sayFacts, sentence } from '../../words/say'
import { factWord } from '../factWord'
import { rowsOf } from '../grid/gridRow'
import { foldId, linesOf } from '../grid/line'
import { labelsOfRows } from '../labelOf'
import { afterDrawing } from './afterDrawing'
import { announce } from './announce'
import { createArrangement } from './arrangement'
import type { Book } from './book'
import { catalogOf } from './catalogOf'
import { editWords } from './editWords'
import { afterFirstNumbers, firstNumbersShown } from './firstNumbers'
import { formulas, ON_THEIR_WAY, prepareFormulas } from './formulas'
import { createHeld } from './held'
import { createParts } from './parts'
import { createSaver, type Saving } from './saving'
import { createSelection } from './selection'
import { touched } from './touched'
import { createValues, type Values } from './values'

/** In good time for the first edit that is kept and the first formula that is typed; milliseconds after the first numbers. */
const CHECKS_AFTER = 200
const FORMULAS_AFTER = 2000

/** What is done about an edit besides waits for the engine's answer, so that the numbers come first, but for so long only; milliseconds. */
const ANSWERED_WITHIN = 50

/** Changes that are written in one go anyway, in whatever order they came. */
const FEW_CHANGES = 100

/** Where edits are kept: resolves when they are on the disk. */
export type Append = (edits: readonly Edit[]) => Promise<undefined | Problem>

/**
 * An open notebook. Every edit goes one way: checked, applied, remembered for undo, sent to the engine and to the store;
 * the cells that changed redraw. `append` null: it is not kept anywhere.
 */
export function createBook(first: Notebook, append: Append | null, writable: () => boolean): Book {
  const held = createHeld(first)
  const notebook = held.read
  const [history, setHistory] = createSignal(createHistory())
  const [engineTrouble, setEngineTrouble] = createSignal<Problem | null>(null)
  const now = createValues()
  const later = createValues()

  const parts = createParts(first)
  const withOwn = createMemo(() => catalogOf({ worksheets: parts.worksheets(), rows: parts.rows() }))
  const catalog = createMemo(() => withOwn().catalog)
  labelsOfRows((name) => untrack(catalog).quantities.get(name)?.row)
  sayFacts((code, name, fact) => factWord(catalog(), code, name, fact))
  const baseline = createMemo(() => parts.order()[0] ?? '')
  const rows = createMemo(() => rowsOf(catalog()))

  const arrangement = createArrangement(first.id)
  const lines = createMemo(() => linesOf(rows(), arrangement.folded()))
  const selection = createSelection(lines, parts.order, reveal)

  const saver = append ? createSaver(append, answeredSoon) : null
  const engine = createEngineClient()
  engine.onRestart((why, changes) => {
    setEngineTrouble(why)
    receive(changes)
  })
  engine.onRunaway(takeBack)
  /** what the engine said last, of cells that the page may still be drawing */
  const told = new Map<string, Outcome>()
  let answer: Promise<unknown> = engine.open(first, receive)
  void answer.then(() => afterDrawing(firstNumbersShown))
  onCleanup(() => engine.close())
  void prepareActs(hasFormulas(first))

  function reveal(key: string): void {
    const row = arrangement.folded().size > 0 && rows().find((one) => one.key === key)
    if (!row) return
    arrangement.fold(foldId(row.worksheet), false)
    arrangement.fold(foldId(row.worksheet, row.group), false)
  }

  function receive(changes: readonly Change[]): void {
    for (const { scenario, quantity, outcome } of changes) told.set(cellKey(scenario, quantity), outcome)
    const ordered = changes.length > FEW_CHANGES ? nearFirst(changes) : changes
    now.follow(ordered)
    afterDrawing(() => later.follow(ordered))
  }

  /** Row by row, the rows of the worksheet in use before the others. */
  function nearFirst(changes: readonly Change[]): readonly Change[] {
    const here = untrack(selection.line)?.worksheet
    const rank = new Map<string, number>()
    untrack(rows).forEach(({ worksheet, quantity }, index) => {
      const near = worksheet === here ? index - 100_000 : index
      rank.set(quantity.name, Math.min(rank.get(quantity.name) ?? near, near))
    })
    const placed = changes.map((change) => ({ change, at: rank.get(change.quantity) ?? 0 }))
    return placed.sort((a, b) => a.at - b.at).map(({ change }) => change)
  }

  function answeredSoon(): Promise<unknown> {
    return Promise.race([answer, pause(ANSWERED_WITHIN)])
  }

  /** Takes an edit in, whoever made it, with the notebook and the history that come of it. */
  function take(edit: Edit, next: Notebook, past: History, after?: () => void): void {
    // First, so that the worker computes meanwhile.
    const news = engine.edit([edit])
    const cells = touched(edit, untrack(parts.order))
    const entered = edit.type === 'set_cell' ? [cellKey(edit.scenario, edit.quantity)] : cells
    // What follows the cell is redrawn with its new value; where that is the old one, its source may still be another.
    const follow = (changes: readonly Change[]) => {
      receive(changes)
      if (entered !== cells && cells !== 'all') now.touch(without(cells, changes))
    }
    const draw = () => {
      batch(() => {
        held.show()
        // as it is by now: another edit may have been drawn before
        parts.follow(untrack(notebook))
        now.touch(entered)
        saver?.show()
      })
      afterDrawing(() => later.touch(cells))
      after?.()
    }
    held.set(next)
    setHistory(past)
    answer = after ? inOneGo(news, follow, draw) : news.then(follow)
    saver?.put([edit])
    if (!after) draw()
  }

  /** Brings an entry and the numbers that follow from it onto the page together, the entry alone where they do not come at once. */
  async function inOneGo(
    news: Promise<readonly Change[]>,
    follow: (changes: readonly Change[]) => void,
    draw: () => void,
  ): Promise<void> {
    const early = Promise.race([news, pause(ANSWERED_WITHIN)]).then((changes) => {
      if (changes) follow(changes)
      return changes
    })
    // The numbers first.
    const there = await early
    draw()
    if (!there) follow(await news)
  }

  const dispatch = (edit: Edit) => enter(edit)

  function enter(edit: Edit, after?: () => void): Problem | null {
    if (!untrack(writable)) return problem('read_only')
    const before = untrack(notebook)
    const refused = checkEdit(before, edit, untrack(catalog), formulas()?.check ?? (() => ON_THEIR_WAY))
    if (refused) return refused
    const applied = apply(before, edit)
    if (isProblem(applied)) return applied
    const { rows, worksheets } = applied.notebook
    const same = rows === before.rows && worksheets === before.worksheets
    const catalogAfter = same ? untrack(catalog) : catalogOf({ rows, worksheets }).catalog
    const circle = formulas()?.circle(applied.notebook, catalogAfter, edit) ?? null
    if (circle) return circle
    take(edit, applied.notebook, remember(untrack(history), edit, applied), after)
    return null
  }

  /** Takes back what stopped the engine: the step that was made, or the one that was undone or done again. */
  function takeBack([edit]: readonly Edit[]): Problem | null {
    const { past, future } = untrack(history)
    const made = past.find((one) => one.edit === edit)
    const undone = future.find((one) => one.inverse === edit)
    const way = made?.inverse ?? undone?.edit
    const applied = way && untrack(writable) ? apply(untrack(notebook), way) : null
    if (!edit || !way || !applied || isProblem(applied)) return problem('engine_runaway_kept')
    const what = editWords(edit, untrack(notebook), untrack(catalog))
    take(way, applied.notebook, {
      past: past.filter((one) => one !== made),
      future: future.filter((one) => one !== undone),
    })
    return problem('engine_runaway', [], { what })
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
    take(turned.edit, applied.notebook, turned.history)
  }

  const common = {
    notebook,
    catalog,
    refusedWorksheets: () => withOwn().refused,
    scenarios: parts.order,
    baseline,
    scenario: (id: string) => own(parts.scenarios(), id),
    sample: (id: string) => own(parts.samples(), id),
    rows,
    lines,
    arrangement,
    unit(quantity: string) {
      const chosen = own(parts.units(), quantity)
      return chosen ?? displayUnit(catalog().quantities.get(quantity)?.row.unit ?? '1', parts.profile())
    },
    async answered() {
      await answer
      return (scenario: string, quantity: string) => told.get(cellKey(scenario, quantity))
    },
    formulasUnder: engine.formulasUnder,
    dispatch,
    enter,
    undo: () => step(undo),
    redo: () => step(redo),
    canUndo: () => history().past.length > 0,
    canRedo: () => history().future.length > 0,
    saving: (): Saving => saver?.saving() ?? { state: 'not_kept' },
    saveAgain: () => saver?.again(),
    settled: () => saver?.settled() ?? Promise.resolve(),
    writable,
    engineTrouble,
    selection,
  }

  const from = (values: Values): Pick<Book, 'outcome' | 'source'> => ({
    outcome: values.outcome,
    source(scenario, quantity) {
      values.trackSource(scenario, quantity)
      return resolve(untrack(notebook), catalog(), scenario, quantity)
    },
  })
  const unhurried: Book = {
    ...common,
    ...from(later),
    get unhurried() {
      return unhurried
    },
  }
  return { ...common, ...from(now), unhurried }
}

const pause = (time: number) => new Promise<undefined>((resolve) => setTimeout(() => resolve(undefined), time))

/** Fetches what the first acts need, once the numbers are there; what finds circles before the rest, where formulas are. */
async function prepareActs(withFormulas: boolean): Promise<void> {
  await afterFirstNumbers(0)
  if (withFormulas) void prepareFormulas()
  await afterFirstNumbers(CHECKS_AFTER)
  void prepareKeeping()
  await afterFirstNumbers(FORMULAS_AFTER)
  void prepareFormulas()
}

/** Where there are formulas, even clearing a cell may close a circle, and what finds it has to be there. */
function hasFormulas(notebook: Notebook): boolean {
  return Object.values(notebook.cells).some(readsOthers)
}

function without(cells: readonly string[], changes: readonly Change[]): readonly string[] {
  const changed = new Set(changes.map(({ scenario, quantity }) => cellKey(scenario, quantity)))
  return cells.filter((cell) => !changed.has(cell))
}
