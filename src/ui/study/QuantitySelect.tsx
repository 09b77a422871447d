import { createMemo, For, Show } from 'solid-js'
import { worksheetLabel } from '../grid/worksheetLabel'
import { labelOf } from '../labelOf'
import { useBook } from '../shell/book'
import { isListed, numbersOf } from './quantityList'

/** A choice of one quantity, by worksheet. */
export function QuantitySelect(props: {
  label: string
  kind: 'input' | 'computed' | 'any'
  value: string
  /** what stands there while nothing is chosen; choosing then adds, and it stands there again */
  empty?: string
  onChange: (quantity: string) => void
}) {
  const book = useBook()
  const lists = createMemo(() => numbersOf(book.catalog(), props.kind))
  return (
    <label>
      {props.label}
      <select
        class="field"
        aria-label={props.label === '' ? props.empty : undefined}
        onChange={(event) => {
          const { value } = event.currentTarget
          if (props.empty !== undefined) event.currentTarget.value = ''
          if (value !== '') props.onChange(value)
        }}
      >
        <Show when={props.empty}>{(empty) => <option value="">{empty()}</option>}</Show>
        {/* a select without a chosen option would name its first, which is another quantity */}
        <Show when={props.empty === undefined && !isListed(lists(), props.value)}>
          <option value={props.value} selected>
            {labelOf(props.value, book.catalog().quantities.get(props.value)?.row)}
          </option>
        </Show>
        <For each={lists()}>
          {({ worksheet, quantities }) => (
            <optgroup label={worksheetLabel(worksheet)}>
              <For each={quantities}>
                {({ name, row }) => (
                  <option value={name} selected={props.empty === undefined && name === props.value}>
                    {labelOf(name, row)}
                  </option>
                )}
              </For>
            </optgroup>
          )}
        </For>
      </select>
    </label>
  )
}
