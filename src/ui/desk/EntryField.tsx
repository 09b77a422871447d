import { createUniqueId, For, type JSX, Show } from 'solid-js'
import type { Cell } from '../../notebook/notebook'
import { sentence } from '../../words/say'
import { helpOf, labelOf } from '../labelOf'
import { useBook } from '../shell/book'
import { commitCell } from './commitReading'
import { createEntry } from './createEntry'
import { UnitSelect } from './UnitSelect'

/** A quantity with its unit, as one line of the form. */
export function EntryField(props: {
  quantity: string
  /** Enter passes it by */
  aside?: boolean
  label?: string
  commit?: (cell: Cell | null) => ReturnType<typeof commitCell>
  stay?: (cell: Cell | null) => boolean
  onPlus?: () => void
  /** what has to be said about what stands there */
  notes?: readonly string[]
  /** what helps to fill it in */
  hint?: string
  /** beside the unit: the test, the verdict */
  children?: JSX.Element
}) {
  const book = useBook()
  const id = createUniqueId()
  const row = () => book.catalog().quantities.get(props.quantity)?.row
  const stands = () => {
    const source = book.source(book.baseline(), props.quantity)
    return source.from === 'typed' || source.from === 'sample' ? source.cell : null
  }
  const entry = createEntry({
    quantity: props.quantity,
    field: props.quantity,
    stands,
    commit: (cell) => (props.commit ? props.commit(cell) : commitCell(book, props.quantity, cell)),
    stay: (cell) => props.stay?.(cell) ?? false,
    ...(props.onPlus ? { onPlus: () => props.onPlus?.() } : {}),
  })
  const notes = () => {
    const fault = entry.fault()
    return fault ? [sentence(fault)] : (props.notes ?? [])
  }

  return (
    <div class="line">
      <label for={id} title={helpOf(props.quantity, row())}>
        {props.label ?? labelOf(props.quantity, row())}
      </label>
      <input
        id={id}
        type="text"
        class="field"
        inputmode="decimal"
        autocomplete="off"
        data-desk={props.aside ? undefined : props.quantity}
        value={entry.text()}
        disabled={!book.writable()}
        aria-invalid={entry.fault() !== null}
        aria-describedby={notes().length > 0 ? `${id}-notes` : undefined}
        {...entry.input}
      />
      <UnitSelect quantity={props.quantity} />
      {props.children}
      <div class="notes" id={`${id}-notes`} aria-live="polite">
        <For each={notes()}>{(note) => <p>{note}</p>}</For>
        <Show when={props.hint}>{(hint) => <p class="quiet">{hint()}</p>}</Show>
      </div>
    </div>
  )
}
