import { For } from 'solid-js'
import { say } from '../../words/say'

/** Whether the readings of the new scenario follow those that they come from. @param kind what they would follow: cells, or a plan */
export function CarryHow(props: {
  kind: 'live' | 'plan'
  source: string
  live: boolean
  onChange: (live: boolean) => void
}) {
  return (
    <fieldset>
      <legend>{say('carry.how')}</legend>
      <For each={[true, false]}>
        {(one) => {
          const key = one ? (`carry.how.${props.kind}` as const) : 'carry.how.numbers'
          return (
            <label>
              <input type="radio" name="live" checked={props.live === one} onChange={() => props.onChange(one)} />
              <span>
                {say(key, { name: props.source })}
                <small>{say(`${key}_says`, { name: props.source })}</small>
              </span>
            </label>
          )
        }}
      </For>
    </fieldset>
  )
}

export function CarryName(props: { name: string; onInput: (name: string) => void }) {
  return (
    <label class="name">
      {say('carry.new_name')}
      <input
        class="field"
        value={props.name}
        maxlength={200}
        autocomplete="off"
        onInput={(event) => props.onInput(event.currentTarget.value)}
      />
    </label>
  )
}
