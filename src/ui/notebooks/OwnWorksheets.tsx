import { createSignal, For } from 'solid-js'
import type { Problem } from '../../words/problem'
import { say } from '../../words/say'
import { prepareOwnWorksheets } from '../../worksheet/ownWorksheets'
import { useBook } from '../shell/book'
import { FileButton } from './FileButton'
import { Problems } from './Problems'
import { readWorksheetFile } from './readWorksheetFile'

/** Worksheets that the reader brought: load one from a definition file, take one out again. */
export function OwnWorksheets() {
  const book = useBook()
  const [problems, setProblems] = createSignal<readonly Problem[]>([])
  const own = () => Object.keys(book.notebook().worksheets)
  const label = (id: string) => book.catalog().worksheets.find((definition) => definition.id === id)?.label ?? id

  async function load(file: File): Promise<void> {
    const read = await readWorksheetFile(file, book.notebook().worksheets)
    if (!('format' in read)) {
      setProblems(read)
      return
    }
    await prepareOwnWorksheets()
    const trouble = book.dispatch({ type: 'put_worksheet', id: read.id, definition: read })
    setProblems(trouble ? [trouble] : [])
  }

  return (
    <>
      <h2>{say('page.notebooks.worksheets')}</h2>
      <p class="intro">{say('page.notebooks.worksheets_intro')}</p>
      <ul class="lines">
        <For each={own()}>
          {(id) => (
            <li>
              <span class="name">{label(id)}</span>
              <span class="when">{id}</span>
              <button
                type="button"
                class="act"
                disabled={!book.writable()}
                onClick={() => book.dispatch({ type: 'remove_worksheet', id })}
              >
                {say('page.notebooks.remove_worksheet', { name: label(id) })}
              </button>
            </li>
          )}
        </For>
      </ul>
      <div class="acts">
        <FileButton
          label={say('page.notebooks.load_worksheet')}
          accept=".json,application/json"
          disabled={!book.writable()}
          onFile={load}
        />
      </div>
      <Problems problems={book.refusedWorksheets()} />
      <Problems problems={problems()} intro={say('page.notebooks.refused')} />
    </>
  )
}
