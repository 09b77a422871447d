import { createMemo, createResource, createSignal, Show } from 'solid-js'
import { createFinder } from '../../storage/finder'
import type { Entry } from '../../storage/records'
import { forgetWords } from '../../words/en/forget'
import { isProblem, type Problem } from '../../words/problem'
import { addWords, say, sentence } from '../../words/say'
import { setLabFile } from '../lab/labFile'
import { announce } from '../shell/announce'
import { useBook } from '../shell/book'
import { useDesk } from '../shell/desk'
import { goTo } from '../shell/place'
import { FileButton } from './FileButton'
import { ForgetDialog } from './ForgetDialog'
import { NotebookForm } from './NotebookForm'
import { NotebookList } from './NotebookList'
import { OwnWorksheets } from './OwnWorksheets'
import { Problems } from './Problems'
import { readNotebookFile } from './readNotebookFile'
import { saveToFile } from './saveToFile'

addWords(forgetWords)

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
  const searching = createMemo(() => wanted().trim() !== '')
  const finder = createMemo(() => (searching() ? createFinder(list()) : null))
  const found = createMemo(() => {
    const all = list()
    const now = finder()
    return now === null ? all : Array.from(now.find(wanted())).flatMap((at) => all[at] ?? [])
  })
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

  async function openEntry({ id }: Entry): Promise<void> {
    if (!isOpen(id)) await desk.open(id)
    goTo({ page: 'worksheets' })
  }

  async function copyEntry({ id, name }: Entry): Promise<void> {
    settle(await desk.copy(id, say('page.notebooks.copy_of', { name })), () => void refetch())
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
        <form
          role="search"
          onSubmit={(event) => {
            event.preventDefault()
            const [first] = found()
            if (wanted().trim() !== '' && first) void openEntry(first)
          }}
        >
          <label>
            {say('forget.find')}
            <input
              type="search"
              class="field"
              autocomplete="off"
              onInput={(event) => setWanted(event.currentTarget.value)}
            />
          </label>
          <span class="quiet" role="status">
            {say('forget.found', { count: found().length, all: list().length })}
          </span>
        </form>
      </Show>
      <Show when={isProblem(kept()) && (kept() as Problem)}>
        {(trouble) => <p class="warm">{sentence(trouble())}</p>}
      </Show>
      <NotebookList
        entries={found()}
        none={say(wanted() ? 'forget.none_found' : 'page.notebooks.none')}
        acts={{
          isOpen,
          open: (entry) => void openEntry(entry),
          copy: (entry) => void copyEntry(entry),
          remove: setLeaving,
        }}
      />
      <Show when={leaving()} keyed>
        {(entry) => (
          <ForgetDialog
            entry={entry}
            onClose={() => setLeaving(null)}
            onDelete={async (forgetting) => {
              setLeaving(null)
              settle(await desk.forget(entry, forgetting), () => {
                setLabFile(null)
                announce(say('forget.done', { name: entry.name }))
                void refetch()
              })
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
