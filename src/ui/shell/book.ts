import { type Accessor, createContext, useContext } from 'solid-js'
import type { Change } from '../../engine/client'
import type { Outcome } from '../../engine/outcome'
import type { CellPlace } from '../../notebook/cellPlace'
import type { Edit } from '../../notebook/edit'
import type { Notebook, Sample, Scenario } from '../../notebook/notebook'
import type { Source } from '../../notebook/resolve'
import type { Problem } from '../../words/problem'
import type { Outline } from '../../worksheet/catalog'
import type { GridRow } from '../grid/gridRow'
import type { Line } from '../grid/line'
import type { Arrangement } from './arrangement'
import type { Saving } from './saving'
import type { Selection } from './selection'

/** The open notebook as components see it: they read it and send it edits, and nothing else. */
export interface Book {
  readonly notebook: Accessor<Notebook>
  readonly catalog: Accessor<Outline>
  /** why some of the notebook's own worksheets are left out of the catalog */
  readonly refusedWorksheets: Accessor<readonly Problem[]>
  /** ids, in order; the first is the baseline's. The array changes only when a column comes, goes or moves. */
  readonly scenarios: Accessor<readonly string[]>
  readonly baseline: Accessor<string>
  scenario(id: string): Scenario | undefined
  sample(id: string): Sample | undefined
  /** every row of the page, top to bottom */
  readonly rows: Accessor<readonly GridRow[]>
  /** what the arrow keys walk: the rows, and one line for each part that is folded */
  readonly lines: Accessor<readonly Line[]>
  readonly arrangement: Arrangement
  /** undefined until the engine has answered for the first time */
  outcome(scenario: string, quantity: string): Outcome | undefined
  /** resolves when the engine has answered every edit so far, with all that it says of the cells; not tracked */
  answered(): Promise<(scenario: string, quantity: string) => Outcome | undefined>
  /** what the rows' own formulas would give in cells that have something typed over them */
  formulasUnder(cells: readonly CellPlace[]): Promise<readonly Change[]>
  source(scenario: string, quantity: string): Source
  /** the unit code that the quantity is shown in */
  unit(quantity: string): string
  /** null when the edit was taken; a problem leaves the notebook as it was */
  dispatch(edit: Edit): Problem | null
  /**
   * As `dispatch`, for what is entered in an open cell: it is drawn with the numbers that follow from it, which most often
   * are there before a frame is; without them where they do not come at once.
   * @param after what the page does right after the numbers are drawn
   */
  enter(edit: Edit, after: () => void): Problem | null
  undo(): void
  redo(): void
  readonly canUndo: Accessor<boolean>
  readonly canRedo: Accessor<boolean>
  readonly saving: Accessor<Saving>
  /** tries again to keep what could not be kept */
  saveAgain(): void
  /** resolves when nothing waits to be kept any more, or keeping it has failed */
  settled(): Promise<void>
  /** false while another tab has the notebook */
  readonly writable: Accessor<boolean>
  /** why the engine was started again; null when it never was, or the reader has seen it */
  readonly engineTrouble: Accessor<Problem | null>
  readonly selection: Selection
  /** the same book, whose values follow a moment later: for what stands beside the grid and must not hold it up */
  readonly unhurried: Book
}

export const BookContext = createContext<Book>()

export function useBook(): Book {
  const book = useContext(BookContext)
  if (!book) throw new RangeError('there is no open notebook here')
  return book
}
