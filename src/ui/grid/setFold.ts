import { batch } from 'solid-js'
import type { Book } from '../shell/book'
import { cellName } from '../shell/selection'
import { foldId, isRow } from './line'

/** Folds a group or a worksheet, or opens it. What was selected in it stays within reach: the selection goes to its line. */
export function setFold(book: Book, id: string, folded: boolean): void {
  const { selection, arrangement } = book
  const here = selection.line()
  const scenario = book.scenarios()[selection.position().column]
  const holds = (line: typeof here) =>
    line !== undefined &&
    (line.worksheet === id || (isRow(line) ? foldId(line.worksheet, line.group) === id : line.fold === id))
  batch(() => {
    arrangement.fold(id, folded)
    if (!holds(here) || scenario === undefined) return
    const line = book.lines().find(holds)
    if (line) selection.select(cellName(line.key, scenario))
  })
}
