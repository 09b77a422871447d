import { DetailedCellError, HyperFormula, type RawCellContent } from 'hyperformula'
import { problem } from '../words/problem'
import { carried } from './carried'
import { CHECKS, type Layout, QUANTITIES, SOLVES } from './layout'
import { cellId, NoticeBoard } from './notices'
import type { Notice, Outcome } from './outcome'
import { registerFunctions } from './plugin'
import { type ColumnOf, type Content, createWriter, type Writer } from './sheets'

/** How every engine of ours is set up, but for its context. */
export const CONFIG = {
  licenseKey: 'gpl-v3',
  functionArgSeparator: ';',
  smartRounding: false,
  undoLimit: 0,
  useStats: false,
} as const

/**
 * Any number of columns over one layout in one engine. It knows quantities and contents, not notebooks: a notebook's
 * scenarios, a lab file's rows and a sweep's points are all columns here.
 */
export class Columns {
  readonly #hf: HyperFormula
  readonly #board = new NoticeBoard()
  readonly #layout: Layout
  readonly #writer: Writer
  /** what was last written, so that an unchanged cell is not written again: by column, then row */
  readonly #written: RawCellContent[][] = []

  constructor(
    layout: Layout,
    columns: readonly ((quantity: string) => Content)[],
    columnOf: ColumnOf = () => undefined,
    baseline: 0 | null = 0,
  ) {
    registerFunctions()
    this.#layout = layout
    this.#writer = createWriter(layout, columnOf, baseline)
    const sheets = this.#writer.sheets(columns)
    columns.forEach((_, column) => {
      this.#written[column] = layout.quantities.map((_, row) => sheets.q[row]?.[column] ?? null)
    })
    this.#hf = HyperFormula.buildFromSheets(sheets, { ...CONFIG, context: this.#board })
    this.#board.takeTouched()
  }

  /** Writes within `write`, then computes once; answers with the cells that computed, as [column, quantity]. */
  change(write: () => void): (readonly [column: number, quantity: string])[] {
    this.#board.takeTouched()
    // Not `batch`: it gathers an undo entry of all writes, which costs a sixth of a long run.
    let changes: ReturnType<HyperFormula['resumeEvaluation']> = []
    this.#hf.suspendEvaluation()
    try {
      write()
    } finally {
      changes = this.#hf.resumeEvaluation()
    }
    const seen = new Set<number>(this.#board.takeTouched())
    for (const change of changes) {
      if ('address' in change) seen.add(cellId(change.address.sheet, change.address.row, change.address.col))
    }
    const cells = new Set<number>()
    for (const id of seen) {
      const row = id % 4096
      const sheet = Math.floor(id / 4096) % 4
      if (sheet === QUANTITIES) cells.add(id)
      if (sheet !== CHECKS) continue
      const owner = this.#layout.rowOf.get(this.#layout.checks[row]?.quantity ?? '')
      if (owner !== undefined) cells.add(cellId(QUANTITIES, owner, Math.floor(id / 16384)))
    }
    return [...cells].map((id) => [Math.floor(id / 16384), this.#layout.quantities[id % 4096]?.name ?? ''] as const)
  }

  /** Sets one cell; only inside `change`. */
  put(column: number, quantity: string, content: Content): void {
    const row = this.#layout.rowOf.get(quantity)
    if (row === undefined) return
    const raw = this.#writer.quantity(content, row, column)
    const written = this.#written[column] ?? []
    this.#written[column] = written
    if (written[row] === raw) return
    written[row] = raw
    // The marks of the formula that stood here; one that stands here now makes its own.
    this.#board.clear(cellId(QUANTITIES, row, column))
    this.#hf.setCellContents({ sheet: QUANTITIES, row, col: column }, raw)
  }

  /** Fills a column that was not there, or was cleared; only inside `change`. */
  add(column: number, content: (quantity: string) => Content): void {
    for (const quantity of this.#layout.quantities) this.put(column, quantity.name, content(quantity.name))
    this.#layout.solves.forEach((id) => {
      const row = this.#layout.solveRow.get(id)
      if (row !== undefined)
        this.#hf.setCellContents({ sheet: SOLVES, row, col: column }, this.#writer.solve(id, column))
    })
    this.#layout.checks.forEach((_, row) => {
      this.#hf.setCellContents({ sheet: CHECKS, row, col: column }, this.#writer.check(row, column))
    })
  }

  /** Empties a column, for a later `add`; only inside `change`. Nothing may refer to it any more. */
  clear(column: number): void {
    this.#written[column] = []
    const empty = (sheet: number, rows: number) => {
      for (let row = 0; row < rows; row++) this.#hf.setCellContents({ sheet, row, col: column }, null)
    }
    empty(CHECKS, this.#layout.checks.length)
    empty(QUANTITIES, this.#layout.quantities.length)
    for (const id of this.#layout.solves) {
      const row = this.#layout.solveRow.get(id)
      if (row !== undefined) this.#hf.setCellContents({ sheet: SOLVES, row, col: column }, null)
    }
  }

  /** What stands in a cell, with the notices of the cell, its checks and the solves that it reads. */
  outcome(column: number, quantity: string): Outcome {
    const row = this.#layout.rowOf.get(quantity)
    if (row === undefined) return { problem: problem('unknown_quantity', [quantity]), notices: [] }
    const notices = this.#notices(column, quantity, row)
    const value = this.#hf.getCellValue({ sheet: QUANTITIES, row, col: column })
    if (value instanceof DetailedCellError) return { problem: carried(value), notices }
    return value === null ? { problem: problem('not_computable'), notices } : { value, notices }
  }

  destroy(): void {
    this.#hf.destroy()
  }

  #notices(column: number, quantity: string, row: number): readonly Notice[] {
    const notices = [...this.#board.of(cellId(QUANTITIES, row, column))]
    for (const id of this.#layout.solvesReadBy.get(quantity) ?? []) {
      notices.push(...this.#board.of(cellId(SOLVES, this.#layout.solveRow.get(id) ?? 0, column)))
    }
    for (const check of this.#layout.checksOf.get(quantity) ?? []) {
      const raised = this.#hf.getCellValue({ sheet: CHECKS, row: check, col: column }) === true
      const notice = this.#layout.checks[check]?.notice
      if (raised && notice) notices.push(notice)
    }
    return notices
  }
}
