import type { Position } from './move'

/** A block of cells by position, its edges included. */
export interface Range {
  readonly top: number
  readonly bottom: number
  readonly left: number
  readonly right: number
}

/** The block that has these two cells for opposite corners. */
export function rangeOf(a: Position, b: Position): Range {
  return {
    top: Math.min(a.row, b.row),
    bottom: Math.max(a.row, b.row),
    left: Math.min(a.column, b.column),
    right: Math.max(a.column, b.column),
  }
}

export function sameRange(a: Range | null, b: Range | null): boolean {
  if (a === null || b === null) return a === b
  return a.top === b.top && a.bottom === b.bottom && a.left === b.left && a.right === b.right
}
