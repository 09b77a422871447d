import {
  createEffect,
  createMemo,
  createSignal,
  ErrorBoundary,
  lazy,
  Match,
  onCleanup,
  Show,
  Suspense,
  Switch,
} from 'solid-js'
import { plansFollowed } from '../notebook/planLink'
import { say, sentence } from '../words/say'
import { Banners } from './Banners'
import { focusCell } from './grid/focusCell'
import { Worksheets } from './grid/Worksheets'
import { Margin } from './margin/Margin'
import { Peek } from './margin/Peek'
import { Rail } from './rail/Rail'
import { afterDrawing } from './shell/afterDrawing'
import { announcement } from './shell/announce'
import { BookContext } from './shell/book'
import { createBook } from './shell/createBook'
import { createDesk, DeskContext, type Opened, useDesk } from './shell/desk'
import { drawnLater } from './shell/drawnLater'
import { allowDrop, dropFile } from './shell/dropFile'
import { afterFirstNumbers } from './shell/firstNumbers'
import { guardUnsaved } from './shell/guardUnsaved'
import { isAllKept } from './shell/isAllKept'
import { beforeNewVersion } from './shell/newVersion'
import { onPageKey } from './shell/onPageKey'
import { usePlace } from './shell/place'
import { Unhurried } from './shell/Unhurried'
import { Toolbar } from './Toolbar'

const NotebooksPage = lazy(() => import('./notebooks/NotebooksPage').then((m) => ({ default: m.NotebooksPage })))
const FunctionsPage = lazy(() => import('./reference/FunctionsPage').then((m) => ({ default: m.FunctionsPage })))
const KeysPage = lazy(() => import('./reference/KeysPage').then((m) => ({ default: m.KeysPage })))
const DeskPage = lazy(() => import('./desk/DeskPage').then((m) => ({ default: m.DeskPage })))
const HandoutPage = lazy(() => import('./handout/HandoutPage').then((m) => ({ default: m.HandoutPage })))
const PlanPage = lazy(() => import('./plan/PlanPage').then((m) => ({ default: m.PlanPage })))
const RangesPage = lazy(() => import('./ranges/RangesPage').then((m) => ({ default: m.RangesPage })))
const OutPage = lazy(() => import('./out/OutPage').then((m) => ({ default: m.OutPage })))
const AssumptionsPage = lazy(() =>
  import('./assumptions/AssumptionsPage').then((m) => ({ default: m.AssumptionsPage })),
)
const TracePage = lazy(() => import('./trace/TracePage').then((m) => ({ default: m.TracePage })))
const KeepingPage = lazy(() => import('./keeping/KeepingPage').then((m) => ({ default: m.KeepingPage })))
const StudyPage = lazy(() => import('./study/StudyPage').then((m) => ({ default: m.StudyPage })))
const RecordPage = lazy(() => import('./record/RecordPage').then((m) => ({ default: m.RecordPage })))
const FollowPlans = lazy(() => import('./carry/FollowPlans').then((m) => ({ default: m.FollowPlans })))
const LabPage = lazy(() => import('./lab/LabPage').then((m) => ({ default: m.LabPage })))

export function App() {
  const desk = createDesk()
  return (
    <DeskContext.Provider value={desk}>
      <Show when={desk.opened()} keyed fallback={<NothingOpen />}>
        {(opened) => <OpenBook opened={opened} />}
      </Show>
      <div class="unseen" aria-live="polite">
        {announcement()}
      </div>
    </DeskContext.Provider>
  )
}

function NothingOpen() {
  const desk = useDesk()
  return (
    <main class="page alone">
      <Show when={desk.trouble()} fallback={<p class="still quiet">{say('page.opening')}</p>}>
        {(trouble) => (
          <div class="still">
            <h1>{say('page.opening_failed')}</h1>
            <p>{sentence(trouble().why)}</p>
          </div>
        )}
      </Show>
    </main>
  )
}

function OpenBook(props: { opened: Opened }) {
  const desk = useDesk()
  // The notebook is opened anew, with a book of its own, whenever `opened` changes.
  const { notebook, append, writable } = props.opened
  const book = createBook(notebook, append, () => writable)
  const place = usePlace()
  const [drawer, setDrawer] = createSignal(false)
  // The grid is drawn once what stands round it is: both in one go would hold the page for too long.
  const [framed, setFramed] = createSignal(false)
  afterDrawing(() => setFramed(true))
  // Plans that are followed are made again once the first numbers are there, and what was entered has been drawn.
  const entered = drawnLater(book.notebook)
  const [numbered, setNumbered] = createSignal(false)
  void afterFirstNumbers(0).then(() => setNumbered(true))
  desk.beforeLeaving(book.settled)
  guardUnsaved(book)
  beforeNewVersion(() => isAllKept(book))
  const name = createMemo(() => book.notebook().name)
  createEffect(() => {
    document.title = `${name()} · ${say('page.title')}`
  })

  function explain(): void {
    setDrawer(true)
    document.getElementById('margin')?.focus()
  }

  function onKeyDown(event: KeyboardEvent): void {
    if (event.key === 'Escape' && drawer() && !event.defaultPrevented) closeDrawer()
    else onPageKey(book, event)
  }

  // On the window: the keys work too while the focus is nowhere, as on a page that has just been opened.
  addEventListener('keydown', onKeyDown)
  onCleanup(() => removeEventListener('keydown', onKeyDown))

  /** Past the contents, which are many stops of the Tab key. */
  function skip(): void {
    if (place().page === 'worksheets') focusCell(book)
    else document.getElementById('page')?.focus()
  }

  function closeDrawer(): void {
    setDrawer(false)
    focusCell(book)
  }

  return (
    <BookContext.Provider value={book}>
      {/* biome-ignore lint/a11y/noStaticElementInteractions: a file may be dropped anywhere on the page */}
      <div class="book" onDragOver={allowDrop} onDrop={dropFile}>
        <button type="button" class="skip act" onClick={skip}>
          {say(place().page === 'worksheets' ? 'page.skip_to_grid' : 'page.skip')}
        </button>
        <Banners />
        <Show when={numbered() && plansFollowed(entered()).length > 0}>
          <Suspense>
            <FollowPlans />
          </Suspense>
        </Show>
        <Unhurried>
          <Rail />
        </Unhurried>
        <main
          class="page"
          classList={{ broad: place().page !== 'worksheets' }}
          id="page"
          tabindex={place().page === 'keys' ? 0 : -1}
        >
          <ErrorBoundary fallback={(error) => <p class="still warm">{String(error)}</p>}>
            <Suspense>
              <Switch>
                <Match when={place().page === 'worksheets'}>
                  <Toolbar />
                  <Show when={framed()}>
                    <Worksheets onExplain={explain} />
                  </Show>
                </Match>
                <Match when={place().page === 'notebooks'}>
                  <NotebooksPage />
                </Match>
                <Match when={place().page === 'functions'}>
                  <FunctionsPage />
                </Match>
                <Match when={place().page === 'keys'}>
                  <KeysPage />
                </Match>
                <Match when={place().page === 'desk'}>
                  <DeskPage />
                </Match>
                <Match when={place().page === 'handout'}>
                  <HandoutPage />
                </Match>
                <Match when={place().page === 'plan'}>
                  <PlanPage />
                </Match>
                <Match when={place().page === 'ranges'}>
                  <RangesPage />
                </Match>
                <Match when={place().page === 'out'}>
                  <OutPage />
                </Match>
                <Match when={place().page === 'assumptions'}>
                  <AssumptionsPage />
                </Match>
                <Match when={place().page === 'trace'}>
                  <TracePage />
                </Match>
                <Match when={place().page === 'keeping'}>
                  <KeepingPage />
                </Match>
                <Match when={place().page === 'study'}>
                  <StudyPage />
                </Match>
                <Match when={place().page === 'record'}>
                  <RecordPage />
                </Match>
                <Match when={place().page === 'lab'}>
                  <LabPage />
                </Match>
              </Switch>
            </Suspense>
          </ErrorBoundary>
          <footer class="foot still">{say('page.codes_first')}</footer>
        </main>
        <Show when={place().page === 'worksheets'}>
          <Unhurried>
            <Margin open={drawer()} onClose={closeDrawer} />
            <Peek onExplain={explain} />
          </Unhurried>
        </Show>
      </div>
    </BookContext.Provider>
  )
}
