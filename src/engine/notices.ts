import type { Notice } from './outcome'

/** A cell of the engine as one number: sheets are few, rows under 2^12, columns under 2^20. */
export function cellId(sheet: number, row: number, column: number): number {
  return (column * 4 + sheet) * 4096 + row
}

/**
 * The notices that cells raised while they were computed. A cell clears its own before it computes, so an unchanged
 * value whose notices changed is seen as well.
 */
export class NoticeBoard {
  readonly #raised = new Map<number, Set<Notice>>()
  readonly #touched = new Set<number>()

  clear(cell: number): void {
    this.#touched.add(cell)
    this.#raised.delete(cell)
  }

  raise(cell: number, notice: Notice): void {
    const raised = this.#raised.get(cell)
    if (raised) raised.add(notice)
    else this.#raised.set(cell, new Set([notice]))
  }

  of(cell: number): readonly Notice[] {
    const raised = this.#raised.get(cell)
    return raised ? [...raised] : NONE
  }

  /** The cells that computed since the last call. */
  takeTouched(): number[] {
    const touched = [...this.#touched]
    this.#touched.clear()
    return touched
  }
}

const NONE: readonly Notice[] = []
