import { createMemo, createSignal, For, onMount, Show } from 'solid-js'
import { Portal } from 'solid-js/web'
import { findWords } from '../../words/en/find'
import { addWords, say } from '../../words/say'
import { labelOf } from '../labelOf'
import { useBook } from '../shell/book'
import { cellName } from '../shell/selection'
import { focusCell } from './focusCell'
import type { GridRow } from './gridRow'
import { matchRows } from './matchRows'
import { openOver } from './opened'
import { worksheetLabel } from './worksheetLabel'

addWords(findWords)

const MOST = 12

/** A line to type part of a name in, and what it may mean; Enter goes there. After the WAI-ARIA combobox pattern. */
export function FindQuantity() {
  const book = useBook()
  let box!: HTMLDivElement
  let input!: HTMLInputElement
  const [typed, setTyped] = createSignal('')
  const [at, setAt] = createSignal(0)
  const found = createMemo(() => matchRows(book.rows(), book.catalog().worksheets, typed()))
  const shown = () => found().slice(0, MOST)
  const titleOf = ({ worksheet }: GridRow) => {
    const definition = book.catalog().worksheets.find(({ id }) => id === worksheet)
    return definition ? worksheetLabel(definition) : worksheet
  }

  onMount(() => {
    box.showPopover()
    input.focus()
  })

  function close(): void {
    openOver(null)
    focusCell(book)
  }

  function goTo(row: GridRow | undefined): void {
    if (!row) return
    const scenario = book.scenarios()[book.selection.position().column] ?? book.baseline()
    book.selection.select(cellName(row.key, scenario))
    close()
  }

  function step(by: number): void {
    const count = shown().length
    if (count > 0) setAt((at() + by + count) % count)
    document.getElementById(`found-${at()}`)?.scrollIntoView({ block: 'nearest' })
  }

  function onKeyDown(event: KeyboardEvent): void {
    event.stopPropagation()
    if (event.isComposing) return
    if (event.key === 'ArrowDown') step(1)
    else if (event.key === 'ArrowUp') step(-1)
    else if (event.key === 'Enter') goTo(shown()[at()])
    else if (event.key === 'Escape' || event.key === 'Tab') close()
    else return
    event.preventDefault()
  }

  return (
    <Portal mount={document.getElementById('page') ?? document.body}>
      <div
        ref={box}
        class="find"
        role="search"
        popover="manual"
        onFocusOut={(event) => {
          if (!box.contains(event.relatedTarget as Node | null)) openOver(null)
        }}
      >
        <label>
          <span class="quiet">{say('page.find.title')}</span>
          <input
            ref={input}
            class="field"
            role="combobox"
            aria-label={say('page.find.label')}
            aria-expanded={shown().length > 0}
            aria-controls="found"
            aria-autocomplete="list"
            aria-activedescendant={shown().length > 0 ? `found-${at()}` : undefined}
            autocomplete="off"
            spellcheck={false}
            onInput={(event) => {
              setTyped(event.currentTarget.value)
              setAt(0)
            }}
            onKeyDown={onKeyDown}
          />
        </label>
        <div id="found" role="listbox" aria-label={say('page.find.title')}>
          <For each={shown()}>
            {(row, index) => (
              <div
                id={`found-${index()}`}
                role="option"
                aria-selected={at() === index()}
                onMouseDown={(event) => {
                  event.preventDefault()
                  goTo(row)
                }}
              >
                <span class="serif">{labelOf(row.quantity.name, row.quantity.row)}</span>{' '}
                <span class="quiet">{titleOf(row)}</span>
              </div>
            )}
          </For>
        </div>
        <p class="quiet" role="status">
          <Show when={typed().trim() !== ''}>
            {found().length === 0
              ? say('page.find.none')
              : found().length > MOST
                ? say('page.find.more', { count: found().length - MOST })
                : say('page.find.count', { count: found().length })}
          </Show>
        </p>
      </div>
    </Portal>
  )
}
