import { DetailedCellError, HyperFormula, type RawCellContent } from 'hyperformula'
import type { Value } from '../functions/define'
import { problem } from '../words/problem'
import { compile } from '../worksheet/compile'
import type { Expression } from '../worksheet/formula'
import { carried } from './carried'
import { CHECKS, type Layout, QUANTITIES, SHEET_NAMES, SOLVES } from './layout'
import { cellId, NoticeBoard } from './notices'
import type { Notice, Outcome } from './outcome'
import { registerFunctions } from './plugin'

/** What stands in one cell of one column. There is no blank: a blank would be 0 in arithmetic. */
export type Content =
  | { readonly kind: 'value'; readonly value: Value }
  /** the cell of the first column, by reference */
  | { readonly kind: 'inherit' }
  | { readonly kind: 'missing' }
  /** the row's own formula */
  | { readonly kind: 'own' }
  /** a formula that was entered here */
  | { readonly kind: 'formula'; readonly tree: Expression }
  /** something that cannot be computed, by the code of its problem */
  | { readonly kind: 'refused'; readonly code: string; readonly name: string }

/** The column that a scenario's reference points at; undefined when it is gone. */
export type ColumnOf = (reference: string, quoted: boolean) => number | undefined

const CONFIG = {
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
  readonly #columnOf: ColumnOf
  /** what was last written, so that an unchanged cell is not written again: by column, then row */
  readonly #written: RawCellContent[][] = []

  constructor(
    layout: Layout,
    columns: readonly ((quantity: string) => Content)[],
    columnOf: ColumnOf = () => undefined,
  ) {
    registerFunctions()
    this.#layout = layout
    this.#columnOf = columnOf
    const sheets = layoutSheets(
      layout,
      columns.length,
      (row, column) => {
        const quantity = layout.quantities[row]
        const content = quantity && columns[column]?.(quantity.name)
        return content ? this.#raw(content, row, column) : null
      },
      (row, column) => this.#solve(row, column),
      (row, column) => this.#check(row, column),
    )
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
    const raw = this.#raw(content, row, column)
    const written = this.#written[column] ?? []
    this.#written[column] = written
    if (written[row] === raw) return
    written[row] = raw
    this.#hf.setCellContents({ sheet: QUANTITIES, row, col: column }, raw)
  }

  /** Fills a column that was not there, or was cleared; only inside `change`. */
  add(column: number, content: (quantity: string) => Content): void {
    for (const quantity of this.#layout.quantities) this.put(column, quantity.name, content(quantity.name))
    this.#layout.solves.forEach((id) => {
      const row = this.#layout.solveRow.get(id)
      if (row !== undefined) this.#hf.setCellContents({ sheet: SOLVES, row, col: column }, this.#solve(row, column))
    })
    this.#layout.checks.forEach((_, row) => {
      this.#hf.setCellContents({ sheet: CHECKS, row, col: column }, this.#check(row, column))
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

  #raw(content: Content, row: number, column: number): RawCellContent {
    const quantity = this.#layout.quantities[row]
    if (!quantity) return null
    switch (content.kind) {
      case 'value':
        return typeof content.value === 'string' ? `'${content.value}` : content.value
      case 'inherit':
        return `=${address(row, 0)}`
      case 'missing':
        return `=CELL(NOT_TAKEN("${quantity.name}"))`
      case 'refused':
        return `=CELL(${refused(content.code, content.name)})`
      case 'own':
        return quantity.formula ? this.#computed(quantity, quantity.formula.tree, column) : null
      case 'formula': {
        const body = this.#compiled(content.tree, column, '')
        if (quantity.formula || !('accept' in quantity.row)) return `=CELL(${body})`
        const [min, max] = quantity.row.accept
        return `=ENTRY("${quantity.name}";${min};${max};${body})`
      }
    }
  }

  #computed(quantity: Layout['quantities'][number], tree: Expression, column: number): string {
    const body = this.#compiled(tree, column, '')
    const assumed = 'when_missing' in quantity.row ? quantity.row.when_missing : undefined
    return assumed ? `=CELL(ASSUMED(${body};${assumed.value};"${assumed.of}"))` : `=CELL(${body})`
  }

  #solve(row: number, column: number): string {
    const id = this.#layout.solves.find((solve) => this.#layout.solveRow.get(solve) === row) ?? ''
    const block = this.#layout.catalog.solves.get(id)
    const inputs = (block?.inputs ?? []).map((name) =>
      name === undefined
        ? 'NOT_TAKEN("")'
        : `${SHEET_NAMES[QUANTITIES]}!${address(this.#layout.rowOf.get(name) ?? 0, column)}`,
    )
    return `=${block?.function}(${inputs.join(';')})`
  }

  #check(row: number, column: number): string | null {
    const check = this.#layout.checks[row]
    return check ? `=CELL(${this.#compiled(check.tree, column, `${SHEET_NAMES[QUANTITIES]}!`)})` : null
  }

  #compiled(tree: Expression, column: number, quantities: string): string {
    return compile(tree, ({ of, quoted, name }) => {
      if (of !== null && !quoted && of !== 'baseline') {
        const row = this.#layout.solveRow.get(`${of}.${name}`)
        if (row !== undefined) return `${SHEET_NAMES[SOLVES]}!${address(row, column)}`
      }
      const from = of === null ? column : of === 'baseline' && !quoted ? 0 : this.#columnOf(of, quoted)
      const row = this.#layout.rowOf.get(name)
      if (row === undefined) return refused('unknown_quantity', name)
      return from === undefined ? refused('scenario_gone', of ?? '') : quantities + address(row, from)
    })
  }
}

function layoutSheets(
  layout: Layout,
  count: number,
  quantity: (row: number, column: number) => RawCellContent,
  solve: (row: number, column: number) => RawCellContent,
  check: (row: number, column: number) => RawCellContent,
): Record<(typeof SHEET_NAMES)[number], RawCellContent[][]> {
  const columns = Array.from({ length: count }, (_, column) => column)
  const rows = (height: number, raw: (row: number, column: number) => RawCellContent) =>
    Array.from({ length: height }, (_, row) => columns.map((column) => raw(row, column)))
  const tops = new Set(layout.solves.map((id) => layout.solveRow.get(id)))
  const last = Math.max(-1, ...layout.solveRow.values())
  return {
    q: rows(layout.quantities.length, quantity),
    s: rows(last + 1, (row, column) => (tops.has(row) ? solve(row, column) : null)),
    c: rows(layout.checks.length, check),
  }
}

function refused(code: string, name: string): string {
  return `REFUSED("${code}";"${name.replaceAll('"', '""')}")`
}

/** A relative address: equal formulas in many columns are then parsed once. */
function address(row: number, column: number): string {
  let letters = ''
  for (let rest = column + 1; rest > 0; rest = Math.floor((rest - 1) / 26)) {
    letters = String.fromCharCode(65 + ((rest - 1) % 26)) + letters
  }
  return `${letters}${row + 1}`
}
