import { For, Show } from 'solid-js'
import { say } from '../../words/say'
import { useBook } from '../shell/book'

/** Which scenarios go out; all of them until one is left out. */
export function ScenarioChoice(props: { left: ReadonlySet<string>; onChange: (left: ReadonlySet<string>) => void }) {
  const book = useBook()
  function turn(id: string, on: boolean): void {
    const left = new Set(props.left)
    if (on) left.delete(id)
    else left.add(id)
    props.onChange(left)
  }
  return (
    <Show when={book.scenarios().length > 1}>
      <fieldset class="choice">
        <legend>{say('out.scenarios')}</legend>
        <For each={book.scenarios()}>
          {(id) => (
            <label>
              <input
                type="checkbox"
                checked={!props.left.has(id)}
                onChange={(event) => turn(id, event.currentTarget.checked)}
              />
              {book.scenario(id)?.name}
            </label>
          )}
        </For>
      </fieldset>
    </Show>
  )
}
