import { type Accessor, batch, createMemo, createSignal } from 'solid-js'
import type { Problem } from '../../words/problem'
import type { GridRow } from '../grid/gridRow'
import { isRow, type Line } from '../grid/line'
import type { Position } from '../grid/move'
import { type Range, rangeOf, sameRange } from '../grid/range'
import { createPicked } from './picked'

/** An editor that is open in the selected cell. */
export interface Editing {
  readonly text: string
  /** true when a typed character opened it: the arrows then leave the cell, as in any grid */
  readonly fresh: boolean
}

export interface Cell {
  readonly row: GridRow
  readonly scenario: string
}

/** The cells of a range, as rows and scenarios: every pair of the two. */
export interface Block {
  readonly rows: readonly GridRow[]
  readonly scenarios: readonly string[]
}

/**
 * Which cell is selected, whether it is being edited, and which range of cells reaches from it. Cells are named, so that
 * the selection survives any edit.
 */
export interface Selection {
  /** undefined on the line of something folded */
  readonly cell: Accessor<Cell | undefined>
  readonly line: Accessor<Line | undefined>
  readonly position: Accessor<Position>
  /** the range's corner opposite to the selected cell; the cell itself where no range reaches from it */
  readonly corner: Accessor<Position>
  /** null where one cell alone is selected */
  readonly range: Accessor<Range | null>
  /** where a cell stands; undefined where it is folded away or gone */
  placeOf(cell: string): Position | undefined
  /** the cells of the range, or the selected one; rows that are folded are not among them */
  block(): Block
  isSelected(cell: string): boolean
  /** whether the selection is on the line with this key */
  isLine(key: string): boolean
  /** of the range, by its row and its scenario; a single cell is none */
  isRowIn(row: string): boolean
  isColumnIn(scenario: string): boolean
  isEdited(cell: string): boolean
  /** whether the selected cell stands under this heading of a worksheet */
  isIn(head: string): boolean
  /** by name; what it is folded into opens */
  select(cell: string): void
  selectAt(position: Position): void
  /** a range from the selected cell to this one */
  extendTo(position: Position): void
  /** a range, whose first corner is the selected cell */
  selectRange(from: Position, to: Position): void
  readonly editing: Accessor<Editing | null>
  edit(editing: Editing | null): void
  /** what is wrong with the text in the open editor */
  readonly fault: Accessor<Problem | null>
  setFault(fault: Problem | null): void
}

const START: Position = { row: 0, column: 0 }

/** The id of a cell: also of its element. */
export function cellName(row: string, scenario: string): string {
  return `${row}@${scenario}`
}

/** The id of a scenario's heading in one worksheet. */
export function headName(worksheet: string, scenario: string): string {
  return `head-${worksheet}-${scenario}`
}

/** @param reveal opens what a row is folded into, by the row's key */
export function createSelection(
  lines: Accessor<readonly Line[]>,
  scenarios: Accessor<readonly string[]>,
  reveal: (row: string) => void,
): Selection {
  const [name, setName] = createSignal('')
  const [far, setFar] = createSignal<string | null>(null)
  const [editing, setEditing] = createSignal<Editing | null>(null)
  const [fault, setFault] = createSignal<Problem | null>(null)

  const lineIndex = createMemo(() => new Map(lines().map((line, index) => [line.key, index])))
  const columnIndex = createMemo(() => new Map(scenarios().map((scenario, index) => [scenario, index])))

  const rowOf = (cell: string) => lineIndex().get(cell.slice(0, cell.lastIndexOf('@')))
  const columnOf = (cell: string) => columnIndex().get(cell.slice(cell.lastIndexOf('@') + 1))
  function placeOf(cell: string): Position | undefined {
    const [row, column] = [rowOf(cell), columnOf(cell)]
    return row === undefined || column === undefined ? undefined : { row, column }
  }

  const position = createMemo<Position>(() => ({ row: rowOf(name()) ?? 0, column: columnOf(name()) ?? 0 }), START, {
    equals: samePlace,
  })
  const corner = createMemo<Position>(() => placeOf(far() ?? '') ?? position(), START, { equals: samePlace })
  const range = createMemo<Range | null>(
    () => (samePlace(position(), corner()) ? null : rangeOf(position(), corner())),
    null,
    { equals: sameRange },
  )
  const line = createMemo(() => lines()[position().row])
  const cell = createMemo<Cell | undefined>(
    () => {
      const row = line()
      const scenario = scenarios()[position().column]
      return isRow(row) && scenario !== undefined ? { row, scenario } : undefined
    },
    undefined,
    { equals: (a, b) => a?.row === b?.row && a?.scenario === b?.scenario },
  )
  const effective = createMemo(() => {
    const selected = cell()
    return selected ? cellName(selected.row.key, selected.scenario) : ''
  })

  const isSelected = createPicked(() => [effective()])
  const isLine = createPicked(() => [line()?.key ?? ''])
  const isEdited = createPicked(() => (editing() ? [effective()] : []))
  const isIn = createPicked(() => {
    const here = line()
    const scenario = scenarios()[position().column]
    return here && scenario !== undefined ? [headName(here.worksheet, scenario)] : []
  })
  const rowsIn = ({ top, bottom }: Range) => lines().slice(top, bottom + 1)
  const isRowIn = createPicked(() => {
    const now = range()
    return now ? rowsIn(now).map(({ key }) => key) : []
  })
  const columnsIn = ({ left, right }: Range) => scenarios().slice(left, right + 1)
  const isColumnIn = createPicked(() => {
    const now = range()
    return now ? columnsIn(now) : []
  })

  function nameAt({ row, column }: Position): string | null {
    const to = lines()[row]
    const scenario = scenarios()[column]
    return to && scenario !== undefined ? cellName(to.key, scenario) : null
  }

  return {
    cell,
    line,
    position,
    corner,
    range,
    placeOf,
    block() {
      const whole = range() ?? rangeOf(position(), position())
      return { rows: rowsIn(whole).filter(isRow), scenarios: columnsIn(whole) }
    },
    isSelected,
    isLine,
    isRowIn,
    isColumnIn,
    isEdited,
    isIn,
    select(next) {
      batch(() => {
        reveal(next.slice(0, next.lastIndexOf('@')))
        setName(next)
        setFar(null)
      })
    },
    selectAt(at) {
      const next = nameAt(at)
      if (next === null) return
      batch(() => {
        setName(next)
        setFar(null)
      })
    },
    extendTo(at) {
      const next = nameAt(at)
      if (next !== null) setFar(next)
    },
    selectRange(from, to) {
      const [first, last] = [nameAt(from), nameAt(to)]
      if (first === null || last === null) return
      batch(() => {
        setName(first)
        setFar(last)
      })
    },
    editing,
    edit(next) {
      setFault(null)
      setEditing(next)
    },
    fault,
    setFault,
  }
}

function samePlace(a: Position, b: Position): boolean {
  return a.row === b.row && a.column === b.column
}
