import { createResource, createSignal, For, Show } from 'solid-js'
import type { Entry } from '../../storage/records'
import { isProblem, type Problem } from '../../words/problem'
import { say, sentence } from '../../words/say'
import { useBook } from '../shell/book'
import { useDesk } from '../shell/desk'
import { goTo } from '../shell/place'
import { DeleteDialog } from './DeleteDialog'
import { FileButton } from './FileButton'
import { NotebookForm } from './NotebookForm'
import { OwnWorksheets } from './OwnWorksheets'
import { Problems } from './Problems'
import { readNotebookFile } from './readNotebookFile'
import { saveToFile } from './saveToFile'

/** The notebooks that this browser keeps: new, open, copy, delete, to a file and from one. */
export function NotebooksPage() {
  const desk = useDesk()
  const book = useBook()
  const [kept, { refetch }] = createResource(() => desk.list())
  const [wanted, setWanted] = createSignal('')
  const [problems, setProblems] = createSignal<readonly Problem[]>([])
  const [fromFile, setFromFile] = createSignal(false)
  const [leaving, setLeaving] = createSignal<Entry | null>(null)

  const list = (): readonly Entry[] => {
    const now = kept()
    return now === undefined || isProblem(now) ? [] : now
  }
  const found = () => list().filter(({ name }) => name.toLowerCase().includes(wanted().trim().toLowerCase()))
  const isOpen = (id: string) => book.notebook().id === id

  /** Shows what went wrong, or goes on. */
  function settle(trouble: Problem | null, next?: () => void): void {
    setFromFile(false)
    setProblems(trouble ? [trouble] : [])
    if (!trouble) next?.()
  }

  async function openFile(file: File): Promise<void> {
    const read = await readNotebookFile(file)
    setFromFile(Array.isArray(read))
    if (Array.isArray(read)) setProblems(read)
    else settle(await desk.add(read), () => goTo({ page: 'worksheets' }))
  }

  return (
    <article class="text-page">
      <h1>{say('page.title.notebooks')}</h1>
      <p class="intro">{say('page.notebooks.intro')}</p>
      <form
        onSubmit={async (event) => {
          event.preventDefault()
          const name = String(new FormData(event.currentTarget).get('name')).trim()
          settle(await desk.start(name), () => goTo({ page: 'worksheets' }))
        }}
      >
        <label>
          {say('page.notebooks.new_name')}
          <input class="field" name="name" maxlength={200} autocomplete="off" />
        </label>
        <button type="submit" class="act main">
          {say('page.notebooks.new')}
        </button>
        <FileButton label={say('page.notebooks.open_file')} accept=".json,application/json" onFile={openFile} />
      </form>
      <Problems problems={problems()} intro={fromFile() ? say('page.notebooks.refused') : undefined} />

      <Show when={list().length > 7}>
        <form role="search" onSubmit={(event) => event.preventDefault()}>
          <label>
            {say('page.notebooks.find')}
            <input
              type="search"
              class="field"
              autocomplete="off"
              onInput={(event) => setWanted(event.currentTarget.value)}
            />
          </label>
        </form>
      </Show>
      <Show when={isProblem(kept()) && (kept() as Problem)}>
        {(trouble) => <p class="warm">{sentence(trouble())}</p>}
      </Show>
      <ul class="lines">
        <For
          each={found()}
          fallback={<li class="quiet">{say(wanted() ? 'page.notebooks.none_found' : 'page.notebooks.none')}</li>}
        >
          {(entry) => (
            <li>
              <span class="name">{entry.name}</span>
              <span class="when">
                {isOpen(entry.id)
                  ? say('page.notebooks.is_open')
                  : say('page.notebooks.changed', { when: new Date(entry.changed).toLocaleString() })}
              </span>
              <button
                type="button"
                class="act"
                aria-label={`${say('page.notebooks.open')} ${entry.name}`}
                onClick={async () => {
                  if (!isOpen(entry.id)) await desk.open(entry.id)
                  goTo({ page: 'worksheets' })
                }}
              >
                {say('page.notebooks.open')}
              </button>
              <button
                type="button"
                class="act"
                aria-label={`${say('page.notebooks.copy')} ${entry.name}`}
                onClick={async () =>
                  settle(
                    await desk.copy(entry.id, say('page.notebooks.copy_of', { name: entry.name })),
                    () => void refetch(),
                  )
                }
              >
                {say('page.notebooks.copy')}
              </button>
              <button
                type="button"
                class="act"
                aria-label={`${say('page.notebooks.delete')} ${entry.name}`}
                onClick={() => setLeaving(entry)}
              >
                {say('page.notebooks.delete')}
              </button>
            </li>
          )}
        </For>
      </ul>
      <Show when={leaving()} keyed>
        {(entry) => (
          <DeleteDialog
            name={entry.name}
            onClose={() => setLeaving(null)}
            onDelete={async () => {
              setLeaving(null)
              settle(await desk.remove(entry.id), () => void refetch())
            }}
          />
        )}
      </Show>

      <h2>{say('page.notebooks.this')}</h2>
      <NotebookForm />
      <div class="acts">
        <button type="button" class="act" onClick={() => saveToFile(book.notebook())}>
          {say('page.save_file')}
        </button>
      </div>
      <OwnWorksheets />
    </article>
  )
}
