import { For } from 'solid-js'
import { say } from '../../words/say'
import { useBook } from '../shell/book'

/** Which scenarios a chart shows; an empty list stands for all, also for those that are made later. */
export function ScenariosField(props: { chosen: readonly string[]; onChange: (chosen: readonly string[]) => void }) {
  const book = useBook()
  const isIn = (id: string) => props.chosen.length === 0 || props.chosen.includes(id)

  function turn(id: string, on: boolean): void {
    const next = book.scenarios().filter((one) => (one === id ? on : isIn(one)))
    props.onChange(next.length === book.scenarios().length ? [] : next)
  }

  return (
    <fieldset class="scenarios">
      <legend>{say('page.study.scenarios')}</legend>
      <For each={book.scenarios()}>
        {(id) => (
          <label class="choice">
            <input
              type="checkbox"
              checked={isIn(id)}
              onChange={(event) => {
                // one is left at least: none chosen would mean all
                const last = isIn(id) && book.scenarios().filter(isIn).length === 1
                if (last) event.currentTarget.checked = true
                else turn(id, event.currentTarget.checked)
              }}
            />{' '}
            {book.scenario(id)?.name}
          </label>
        )}
      </For>
    </fieldset>
  )
}
