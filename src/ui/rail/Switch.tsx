import { createUniqueId, For } from 'solid-js'

/** A few words of which one holds: radio buttons that look like text. */
export function Switch<T extends string>(props: {
  label: string
  value: T
  options: readonly (readonly [value: T, label: string])[]
  disabled?: boolean
  onChange: (value: T) => void
}) {
  const name = createUniqueId()
  return (
    <fieldset class="switch" disabled={props.disabled ?? false}>
      <legend>{props.label}</legend>
      <For each={props.options}>
        {([value, label]) => (
          <label>
            <input
              type="radio"
              class="unseen"
              name={name}
              checked={props.value === value}
              onChange={() => props.onChange(value)}
            />
            <span>{label}</span>
          </label>
        )}
      </For>
    </fieldset>
  )
}
