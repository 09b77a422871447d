import { onMount, Show } from 'solid-js'
import { say, sentence } from '../../words/say'
import { labelOf } from '../labelOf'
import { useBook } from '../shell/book'
import { prepareFormulas } from '../shell/formulas'
import { cellName } from '../shell/selection'
import { commitEntry } from './commitEntry'
import type { GridRow } from './gridRow'

/** A line to write in, inside the cell. What cannot be read keeps it open, with the sentence under it. */
export function CellEditor(props: { row: GridRow; scenario: string }) {
  const book = useBook()
  let input: HTMLInputElement | undefined
  const opened = book.selection.editing()
  const faultId = () => `fault-${cellName(props.row.key, props.scenario)}`

  onMount(() => {
    if (opened?.text.startsWith('=')) void prepareFormulas()
    if (!input) return
    input.focus()
    if (opened?.fresh) input.setSelectionRange(input.value.length, input.value.length)
    else input.select()
  })

  return (
    <div class="editor" classList={{ long: opened?.text.startsWith('=') ?? false }}>
      <input
        ref={input}
        value={opened?.text ?? ''}
        inputmode="text"
        autocomplete="off"
        spellcheck={false}
        aria-label={say('page.entry_for', { quantity: labelOf(props.row.quantity.name, props.row.quantity.row) })}
        aria-invalid={book.selection.fault() !== null}
        aria-describedby={book.selection.fault() ? faultId() : undefined}
        onInput={(event) => {
          book.selection.setFault(null)
          const isFormula = event.currentTarget.value.startsWith('=')
          event.currentTarget.parentElement?.classList.toggle('long', isFormula)
          if (isFormula) void prepareFormulas()
        }}
        onBlur={(event) => commitEntry(book, event.currentTarget.value)}
      />
      <div role="alert" id={faultId()}>
        <Show when={book.selection.fault()}>{(fault) => sentence(fault())}</Show>
      </div>
    </div>
  )
}
