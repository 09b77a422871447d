import { batch, createSignal, For, onMount } from 'solid-js'
import type { Edit } from '../../notebook/edit'
import { say } from '../../words/say'
import { labelOf } from '../labelOf'
import { useBook } from '../shell/book'
import { cellName } from '../shell/selection'
import { wordOf } from './cellView'
import { focusCell } from './focusCell'
import type { GridRow } from './gridRow'
import { enterAndLeave, isLeaving } from './leaving'

/** The choices of a cell, as a listbox over it. The empty one falls back to the next source. */
export function ChoiceList(props: { row: GridRow; scenario: string }) {
  const book = useBook()
  let list: HTMLDivElement | undefined
  const name = () => cellName(props.row.key, props.scenario)
  const quantity = () => props.row.quantity.name
  const options = (): string[] => {
    const { row } = props.row.quantity
    return 'input' in row && row.input === 'choice' ? [...row.choices, ''] : []
  }
  const { cell } = book.source(props.scenario, quantity())
  const [at, setAt] = createSignal(Math.max(options().indexOf(cell?.kind === 'choice' ? cell.id : ''), 0))

  const optionId = (index: number) => `${name()}-${index}`
  const words = (id: string) => {
    if (id === '') return say(props.scenario === book.baseline() ? 'page.choice_none' : 'page.choice_as_before')
    return wordOf(quantity(), id, props.row.quantity.row)
  }

  // The character that opened the list goes to the choice that begins with it.
  const typed = book.selection.editing()?.text ?? ''
  if (typed !== '') seek(typed)

  onMount(() => {
    list?.focus()
    list?.scrollIntoView({ block: 'nearest' })
  })

  function seek(letter: string): void {
    const all = options()
    const next = all.findIndex((_, step) => {
      const id = all[(at() + 1 + step) % all.length] ?? ''
      return words(id).toLowerCase().startsWith(letter.toLowerCase())
    })
    if (next >= 0) go((at() + 1 + next) % all.length)
  }

  function go(index: number): void {
    setAt(Math.min(Math.max(index, 0), options().length - 1))
    document.getElementById(optionId(at()))?.scrollIntoView({ block: 'nearest' })
  }

  function choose(index: number): void {
    const id = options()[index] ?? ''
    const edit: Edit = {
      type: 'set_cell',
      scenario: props.scenario,
      quantity: quantity(),
      cell: id === '' ? null : { kind: 'choice', id },
    }
    const close = () =>
      batch(() => {
        book.selection.edit(null)
        focusCell(book)
      })
    if (enterAndLeave(book, edit, close)) close()
  }

  function onKeyDown(event: KeyboardEvent): void {
    // Chosen already: the key is for the grid.
    if (isLeaving()) return
    event.stopPropagation()
    switch (event.key) {
      case 'ArrowDown':
        go(at() + 1)
        break
      case 'ArrowUp':
        go(at() - 1)
        break
      case 'Home':
        go(0)
        break
      case 'End':
        go(options().length - 1)
        break
      case 'Enter':
      case ' ':
      case 'Tab':
        choose(at())
        break
      case 'Escape':
        book.selection.edit(null)
        focusCell(book)
        break
      default:
        if (event.key.length !== 1 || event.ctrlKey || event.metaKey || event.altKey) return
        seek(event.key)
    }
    event.preventDefault()
  }

  return (
    <div
      ref={list}
      class="choices"
      role="listbox"
      tabindex={0}
      aria-label={labelOf(quantity(), props.row.quantity.row)}
      aria-activedescendant={optionId(at())}
      onKeyDown={onKeyDown}
      onBlur={() => book.selection.edit(null)}
    >
      <For each={options()}>
        {(id, index) => (
          <div
            id={optionId(index())}
            role="option"
            aria-selected={at() === index()}
            onMouseDown={(event) => {
              event.preventDefault()
              event.stopPropagation()
              choose(index())
            }}
          >
            {words(id)}
          </div>
        )}
      </For>
    </div>
  )
}
