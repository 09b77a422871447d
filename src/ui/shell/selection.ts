import { type Accessor, createMemo, createSignal } from 'solid-js'
import type { Problem } from '../../words/problem'
import type { GridRow } from '../grid/gridRow'
import type { Position } from '../grid/move'
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

/** Which cell is selected, and whether it is being edited. Cells are named, so that the selection survives any edit. */
export interface Selection {
  readonly cell: Accessor<Cell | undefined>
  readonly position: Accessor<Position>
  isSelected(cell: string): boolean
  isEdited(cell: string): boolean
  /** whether the selected cell stands under this heading of a worksheet */
  isIn(head: string): boolean
  select(cell: string): void
  selectAt(position: Position): void
  readonly editing: Accessor<Editing | null>
  edit(editing: Editing | null): void
  /** what is wrong with the text in the open editor */
  readonly fault: Accessor<Problem | null>
  setFault(fault: Problem | null): void
}

/** The id of a cell: also of its element. */
export function cellName(row: string, scenario: string): string {
  return `${row}@${scenario}`
}

/** The id of a scenario's heading in one worksheet. */
export function headName(worksheet: string, scenario: string): string {
  return `head-${worksheet}-${scenario}`
}

export function createSelection(rows: Accessor<readonly GridRow[]>, scenarios: Accessor<readonly string[]>): Selection {
  const [name, setName] = createSignal('')
  const [editing, setEditing] = createSignal<Editing | null>(null)
  const [fault, setFault] = createSignal<Problem | null>(null)

  const rowIndex = createMemo(() => new Map(rows().map((row, index) => [row.key, index])))
  const columnIndex = createMemo(() => new Map(scenarios().map((scenario, index) => [scenario, index])))

  const position = createMemo<Position>(() => {
    const at = name().lastIndexOf('@')
    return {
      row: rowIndex().get(name().slice(0, at)) ?? 0,
      column: columnIndex().get(name().slice(at + 1)) ?? 0,
    }
  })
  const cell = createMemo<Cell | undefined>(
    () => {
      const row = rows()[position().row]
      const scenario = scenarios()[position().column]
      return row && scenario !== undefined ? { row, scenario } : undefined
    },
    undefined,
    { equals: (a, b) => a?.row === b?.row && a?.scenario === b?.scenario },
  )
  const effective = createMemo(() => {
    const selected = cell()
    return selected ? cellName(selected.row.key, selected.scenario) : ''
  })

  const isSelected = createPicked(effective)
  const isEdited = createPicked(() => (editing() ? effective() : ''))

  const isIn = createPicked(() => {
    const selected = cell()
    return selected ? headName(selected.row.worksheet, selected.scenario) : ''
  })

  return {
    cell,
    position,
    isSelected,
    isEdited,
    isIn,
    select: setName,
    selectAt({ row, column }) {
      const to = rows()[row]
      const scenario = scenarios()[column]
      if (to && scenario) setName(cellName(to.key, scenario))
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
