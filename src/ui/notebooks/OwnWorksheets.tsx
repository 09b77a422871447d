import { createSignal, For, Show } from 'solid-js'
import type { Edit } from '../../notebook/edit'
import { rows as words } from '../../words/en/rows'
import { isProblem, type Problem } from '../../words/problem'
import { addWords, say } from '../../words/say'
import { prepareOwnWorksheets } from '../../worksheet/ownWorksheets'
import { worksheetLabel } from '../grid/worksheetLabel'
import { changeOwnWorksheet, ownDefinition } from '../rows/ownDefinition'
import { copied, emptyWorksheet, moveWorksheet, removeWorksheet } from '../rows/ownWorksheetActs'
import { useBook } from '../shell/book'
import { goTo } from '../shell/place'
import { downloadText } from './downloadText'
import { FileButton } from './FileButton'
import { Problems } from './Problems'
import { readWorksheetFile } from './readWorksheetFile'

addWords(words)

/** Worksheets of the reader's own: copied from others, begun empty, or brought in a file; changed, saved, put in order, taken out. */
export function OwnWorksheets() {
  const book = useBook()
  const [problems, setProblems] = createSignal<readonly Problem[]>([])
  const [fromFile, setFromFile] = createSignal(false)
  const [renaming, setRenaming] = createSignal<string | null>(null)
  const [source, setSource] = createSignal('saturation')
  const own = () => Object.keys(book.notebook().worksheets)
  const label = (id: string) => book.catalog().worksheets.find((definition) => definition.id === id)?.label ?? id
  const locked = () => !book.writable()

  function settle(trouble: Problem | null, ofFile = false): void {
    setFromFile(ofFile)
    setProblems(trouble ? [trouble] : [])
  }

  async function send(edit: Edit | Problem | null): Promise<void> {
    if (edit === null) return
    await prepareOwnWorksheets()
    settle(isProblem(edit) ? edit : book.dispatch(edit))
  }

  async function load(file: File): Promise<void> {
    const read = await readWorksheetFile(file, book.notebook())
    if (!('format' in read)) {
      setFromFile(true)
      setProblems(read)
      return
    }
    await prepareOwnWorksheets()
    settle(book.dispatch({ type: 'put_worksheet', id: read.id, definition: read }), true)
  }

  async function copy(): Promise<void> {
    const original = book.catalog().worksheets.find(({ id }) => id === source())
    if (original) settle(await changeOwnWorksheet(book, copied(original, book.catalog())))
  }

  async function rename(id: string, name: string): Promise<void> {
    const definition = ownDefinition(book.notebook(), id)
    setRenaming(null)
    if (definition && name !== '') settle(await changeOwnWorksheet(book, { ...definition, label: name }))
  }

  function save(id: string): void {
    const definition = book.notebook().worksheets[id]
    downloadText(`${id}.worksheet.json`, `${JSON.stringify(definition, null, 2)}\n`)
  }

  /** A short word, and for those who hear it alone the worksheet's name after it. */
  const act = (short: string, label: string | undefined, run: () => void, off = false) => (
    <button type="button" class="act" aria-label={label} disabled={off} onClick={run}>
      {short}
    </button>
  )

  return (
    <>
      <h2>{say('page.notebooks.worksheets')}</h2>
      <p class="intro">{say('page.notebooks.worksheets_intro')}</p>
      <ul class="lines own-worksheets">
        <For each={own()}>
          {(id, at) => (
            <li>
              <Show
                when={renaming() === id}
                fallback={
                  <>
                    <span class="name">{label(id)}</span>
                    <span class="when">{id}</span>
                  </>
                }
              >
                <form
                  onSubmit={(event) => {
                    event.preventDefault()
                    void rename(id, String(new FormData(event.currentTarget).get('name')).trim())
                  }}
                >
                  <label>
                    {say('sheets.name')}
                    <input class="field" name="name" value={label(id)} maxlength={200} autocomplete="off" autofocus />
                  </label>
                  <button type="submit" class="act main">
                    {say('rows.keep')}
                  </button>
                </form>
              </Show>
              {act(say('sheets.short.open'), say('sheets.open', { name: label(id) }), () =>
                goTo({ page: 'worksheets', part: id }),
              )}
              {act(
                say('sheets.short.rename'),
                say('sheets.rename', { name: label(id) }),
                () => setRenaming(id),
                locked(),
              )}
              {act(
                say('sheets.short.up'),
                say('sheets.up', { name: label(id) }),
                () => void send(moveWorksheet(book.notebook(), id, -1)),
                locked() || at() === 0,
              )}
              {act(
                say('sheets.short.down'),
                say('sheets.down', { name: label(id) }),
                () => void send(moveWorksheet(book.notebook(), id, 1)),
                locked() || at() === own().length - 1,
              )}
              {act(say('sheets.short.export'), say('sheets.export', { name: label(id) }), () => save(id))}
              {act(
                say('sheets.short.remove'),
                say('page.notebooks.remove_worksheet', { name: label(id) }),
                () => void send(removeWorksheet(book.notebook(), book.catalog(), id)),
                locked(),
              )}
            </li>
          )}
        </For>
      </ul>
      <form
        onSubmit={(event) => {
          event.preventDefault()
          void copy()
        }}
      >
        <label>
          {say('sheets.choose')}
          <select class="field" onChange={(event) => setSource(event.currentTarget.value)}>
            <For each={book.catalog().worksheets}>
              {(definition) => (
                <option value={definition.id} selected={definition.id === source()}>
                  {worksheetLabel(definition)}
                </option>
              )}
            </For>
          </select>
        </label>
        <button type="submit" class="act" disabled={locked()}>
          {say('sheets.copy')}
        </button>
        {act(
          say('sheets.new'),
          undefined,
          () =>
            void changeOwnWorksheet(book, emptyWorksheet(book.catalog(), say('sheets.new_name'))).then((trouble) =>
              settle(trouble),
            ),
          locked(),
        )}
        <FileButton
          label={say('page.notebooks.load_worksheet')}
          accept=".json,application/json"
          disabled={locked()}
          onFile={load}
        />
      </form>
      <Problems problems={book.refusedWorksheets()} />
      <Problems problems={problems()} intro={fromFile() ? say('page.notebooks.refused') : undefined} />
    </>
  )
}
