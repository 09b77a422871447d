import { createSignal } from 'solid-js'
import type { Cell } from '../../notebook/notebook'
import { reopen } from '../../units/reopen'
import { isProblem, type Problem } from '../../words/problem'
import { useBook } from '../shell/book'
import { cellName } from '../shell/selection'
import { moveOn } from './chain'
import { readFor } from './commitReading'
import { useDeskPlace } from './placeContext'

/** One field in which a quantity is typed: what stands in it, what is being typed, and what is wrong with that. */
export interface EntryState {
  readonly text: () => string
  readonly fault: () => Problem | null
  readonly input: {
    onInput(event: InputEvent & { currentTarget: HTMLInputElement }): void
    onKeyDown(event: KeyboardEvent & { currentTarget: HTMLInputElement }): void
    onFocus(): void
    onBlur(): void
  }
}

export interface EntryOptions {
  readonly quantity: string
  /** its name in the form; a further reading of a quantity has another than the quantity's */
  readonly field: string
  readonly stands: () => Cell | null
  /** takes it; a problem leaves it being typed */
  readonly commit: (cell: Cell | null) => Problem | null
  /** whether to stay in the field after it was taken: something about it is asked */
  readonly stay?: (cell: Cell | null) => boolean
  /** a plus sign where nothing is being typed */
  readonly onPlus?: () => void
}

/**
 * Enter takes what was typed and moves on; what cannot be read stays, with the reason. What was left when the page was closed is
 * typed again, and not taken before somebody has seen it.
 */
export function createEntry(options: EntryOptions): EntryState {
  const book = useBook()
  const place = useDeskPlace()
  const left = place.left()
  const resumed = left?.field === options.field && left.text !== '' ? left.text : null
  const [typed, setTyped] = createSignal<string | null>(resumed)
  const [fault, setFault] = createSignal<Problem | null>(null)

  const standing = () => {
    const cell = options.stands()
    if (cell?.kind === 'not_taken') return '-'
    if (cell?.kind !== 'value' && cell?.kind !== 'limit') return ''
    const sign = cell.kind === 'value' ? '' : cell.side === 'above' ? '>' : '<'
    return sign + reopen(cell, book.unit(options.quantity))
  }

  /** Answers whether the way is free: nothing was typed, or it was taken and nothing about it is asked. */
  function take(): boolean {
    const entered = typed()
    if (entered === null) return true
    const cell = readFor(book, options.quantity, entered)
    const why = isProblem(cell) ? cell : options.commit(cell)
    setFault(why)
    if (why !== null || isProblem(cell)) return false
    drop()
    return !options.stay?.(cell)
  }

  function drop(): void {
    setTyped(null)
    setFault(null)
    place.at(options.field)
    place.takenUp()
  }

  return {
    text: () => typed() ?? standing(),
    fault,
    input: {
      onInput(event) {
        setTyped(event.currentTarget.value)
        setFault(null)
        place.at(options.field, event.currentTarget.value)
      },
      onKeyDown(event) {
        const { key, currentTarget: input } = event
        if (event.isComposing || event.altKey) return
        if (event.ctrlKey || event.metaKey) {
          // while nothing is being typed, what is taken back is the last reading
          if (typed() !== null || !/^[zy]$/i.test(key)) return
          if (key.toLowerCase() === 'z' && !event.shiftKey) book.undo()
          else book.redo()
        } else if (key === 'Enter') {
          if (take()) moveOn(input, event.shiftKey ? -1 : 1)
          else input.select()
        } else if (key === 'ArrowDown' || key === 'ArrowUp') moveOn(input, key === 'ArrowUp' ? -1 : 1)
        else if (key === 'Escape' && typed() !== null) drop()
        else if (key === '+' && options.onPlus && (typed() ?? '') === '') options.onPlus()
        else return
        event.preventDefault()
      },
      onFocus() {
        if (typed() === null) place.at(options.field)
        // the grid opens on the same cell
        const row = book.rows().find(({ quantity }) => quantity.name === options.quantity)
        if (row) book.selection.select(cellName(row.key, book.baseline()))
      },
      onBlur() {
        // what was only left here, and not typed now, waits to be seen
        if (typed() !== resumed || typed() === null) take()
      },
    },
  }
}
