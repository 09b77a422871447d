import type { CellPlace } from '../notebook/cellPlace'
import type { Edit } from '../notebook/edit'
import type { Notebook } from '../notebook/notebook'
import type { Problem } from '../words/problem'
import type { Outcome } from './outcome'

export interface Change {
  readonly scenario: string
  readonly quantity: string
  readonly outcome: Outcome
}

/** The page's only view of the engine; the other side is a worker that holds the same document. */
export interface EngineClient {
  /** Loads a document; answers with every cell, part by part. */
  open(notebook: Notebook, part: (changes: readonly Change[]) => void): Promise<void>
  /** Sends edits that were applied to the document; answers with the cells whose outcome changed. */
  edit(edits: readonly Edit[]): Promise<readonly Change[]>
  /** What the rows' own formulas would give in cells that have something typed over them; nothing is changed. */
  formulasUnder(cells: readonly CellPlace[]): Promise<readonly Change[]>
  /** Called when the worker died and was started again from the last document; every cell is sent anew, in one or more calls. */
  onRestart(listener: (why: Problem, changes: readonly Change[]) => void): void
  /**
   * Called when the edits that were sent last stopped one worker after another: the listener takes them back by an edit
   * of its own, which the next worker opens with, and says why; null where it cannot.
   */
  onRunaway(listener: (edits: readonly Edit[]) => Problem | null): void
  close(): void
}
