import { createSignal } from 'solid-js'
import type { Problem } from '../../words/problem'
import { say } from '../../words/say'
import { useBook } from '../shell/book'
import { Problems } from './Problems'

/** The open notebook's name, and the line or two about it. */
export function NotebookForm() {
  const book = useBook()
  const [problems, setProblems] = createSignal<readonly Problem[]>([])
  function change(set: { name?: string; place?: string; note?: string }): void {
    const trouble = book.dispatch({ type: 'change_notebook', set })
    setProblems(trouble ? [trouble] : [])
  }
  return (
    <>
      <form class="tall" onSubmit={(event) => event.preventDefault()}>
        <label>
          {say('page.notebooks.name')}
          <input
            class="field"
            maxlength={200}
            autocomplete="off"
            value={book.notebook().name}
            disabled={!book.writable()}
            onChange={(event) => change({ name: event.currentTarget.value.trim() })}
          />
        </label>
        <label>
          {say('forget.place')}
          <input
            class="field"
            maxlength={200}
            autocomplete="off"
            value={book.notebook().place}
            disabled={!book.writable()}
            onChange={(event) => change({ place: event.currentTarget.value.trim() })}
          />
        </label>
        <label>
          {say('page.notebooks.note')}
          <textarea
            class="field"
            rows={2}
            value={book.notebook().note}
            disabled={!book.writable()}
            onChange={(event) => change({ note: event.currentTarget.value.trim() })}
          />
        </label>
      </form>
      <Problems problems={problems()} />
    </>
  )
}
