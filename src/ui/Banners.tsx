import { lazy, Show, Suspense } from 'solid-js'
import { isProblem } from '../words/problem'
import { say, sentence } from '../words/say'
import { downloadText } from './notebooks/downloadText'
import { saveToFile } from './notebooks/saveToFile'
import { announce } from './shell/announce'
import { useBook } from './shell/book'
import { useDesk } from './shell/desk'
import { newVersion } from './shell/newVersion'
import { placeLink } from './shell/place'

const NewVersion = lazy(() => import('./offline/NewVersion').then((m) => ({ default: m.NewVersion })))

/** What the reader has to know before trusting the page: read-only, kept nowhere, engine started again, an example. */
export function Banners() {
  const book = useBook()
  const desk = useDesk()

  /** The way out for a notebook that cannot be read: all that is stored of it, as text. */
  async function saveStored(id: string): Promise<void> {
    const text = await desk.raw(id)
    if (isProblem(text)) announce(sentence(text))
    else downloadText(`${id}.stored.json`, text)
  }

  return (
    <div class="banners">
      <Show when={desk.trouble()}>
        {(trouble) => (
          <p class="banner" role="alert">
            {say('page.opening_failed')} {sentence(trouble().why)}
            <Show when={trouble().id}>
              {(id) => (
                <button type="button" class="act" onClick={() => void saveStored(id())}>
                  {say('page.notebooks.raw')}
                </button>
              )}
            </Show>
            <Show when={trouble().id}>
              {(id) => (
                <a class="act" href={placeLink({ page: 'keeping', part: id() })}>
                  {say('page.opening_earlier')}
                </a>
              )}
            </Show>
          </p>
        )}
      </Show>
      <Show when={desk.blocked()}>
        {(why) => (
          <p class="banner" role="status">
            {sentence(why())}
            <button type="button" class="act" onClick={() => saveToFile(book.notebook())}>
              {say('page.save_file')}
            </button>
          </p>
        )}
      </Show>
      <Show when={!book.writable()}>
        <p class="banner calm" role="status">
          {say('page.banner.read_only')}
        </p>
      </Show>
      <Show when={book.engineTrouble()}>
        {(why) => (
          <p class="banner" role="status">
            {sentence(why())}
          </p>
        )}
      </Show>
      <Show when={book.refusedWorksheets()[0]}>
        {(first) => (
          <p class="banner" role="status">
            {say('page.banner.worksheets', { count: book.refusedWorksheets().length, why: sentence(first()) })}
          </p>
        )}
      </Show>
      <Show when={newVersion()}>
        <Suspense>
          <NewVersion />
        </Suspense>
      </Show>
      <Show when={desk.renamed().length > 0}>
        <p class="banner" role="status">
          {say('page.banner.renamed', { count: desk.renamed().length, names: desk.renamed() })}
        </p>
      </Show>
      <Show when={desk.firstRun()}>
        <p class="banner calm" role="status">
          {say('page.banner.example')}
          <a class="link" href={placeLink({ page: 'notebooks' })}>
            {say('page.notebooks.new')}
          </a>
        </p>
      </Show>
    </div>
  )
}
