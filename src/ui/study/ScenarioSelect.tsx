import { For } from 'solid-js'
import { say } from '../../words/say'
import { useBook } from '../shell/book'

export function ScenarioSelect(props: { value: string; onChange: (scenario: string) => void }) {
  const book = useBook()
  return (
    <label>
      {say('page.study.scenario')}
      <select class="field" onChange={(event) => props.onChange(event.currentTarget.value)}>
        <For each={book.scenarios()}>
          {(id) => (
            <option value={id} selected={id === props.value}>
              {book.scenario(id)?.name}
            </option>
          )}
        </For>
      </select>
    </label>
  )
}
