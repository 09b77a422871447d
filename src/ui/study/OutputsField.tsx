import { For } from 'solid-js'
import { LIMITS } from '../../notebook/limits'
import { say } from '../../words/say'
import { labelOf } from '../labelOf'
import { useBook } from '../shell/book'
import { QuantitySelect } from './QuantitySelect'

/** The quantities of a chart: each can be taken out, and others added. */
export function OutputsField(props: {
  kind: 'computed' | 'any'
  outputs: readonly string[]
  onChange: (outputs: readonly string[]) => void
}) {
  const book = useBook()
  const label = (name: string) => labelOf(name, book.catalog().quantities.get(name)?.row)
  return (
    <fieldset class="outputs">
      <legend>{say('page.study.outputs')}</legend>
      <For each={props.outputs}>
        {(name) => (
          <button
            type="button"
            class="act chip"
            aria-label={say('page.study.take_out', { name: label(name) })}
            onClick={() => props.onChange(props.outputs.filter((other) => other !== name))}
          >
            {label(name)} <span aria-hidden="true">×</span>
          </button>
        )}
      </For>
      <QuantitySelect
        label=""
        kind={props.kind}
        value=""
        empty={say('page.study.add_output')}
        onChange={(name) => {
          if (!props.outputs.includes(name) && props.outputs.length < LIMITS.outputs)
            props.onChange([...props.outputs, name])
        }}
      />
    </fieldset>
  )
}
