import { createMemo, createResource, createSignal, For, Show } from 'solid-js'
import { copyNotebook } from '../../notebook/create'
import { goBack } from '../../notebook/goBack'
import type { Notebook } from '../../notebook/notebook'
import { isProblem, type Problem } from '../../words/problem'
import { say } from '../../words/say'
import { timeText } from '../../words/written'
import { hasOwnParts, prepareOwnWorksheets } from '../../worksheet/ownWorksheets'
import { Problems } from '../notebooks/Problems'
import { announce } from '../shell/announce'
import { useBook } from '../shell/book'
import { useDesk } from '../shell/desk'
import { goTo } from '../shell/place'
import { createChanges } from './createChanges'

/** What a notebook was before, by date, with what was changed; each can be gone back to or opened as a copy. */
export function EarlierStates(props: { notebook: string }) {
  const book = useBook()
  const desk = useDesk()
  const [problem, setProblem] = createSignal<Problem | null>(null)
  const isOpen = () => props.notebook === book.notebook().id
  const [kept, { refetch }] = createResource(
    () => props.notebook,
    async (id) => {
      // the edit that was made last may still be on its way to the disk
      await book.settled()
      return desk.states(id)
    },
  )
  const states = createMemo(() => {
    const now = kept()
    return now === undefined || isProblem(now) ? [] : now
  })
  const [readable] = createResource(
    () => !isOpen() && props.notebook,
    (id) => desk.readable(id),
  )
  const changes = createChanges(
    states,
    (seq) => desk.state(props.notebook, seq),
    () => (isOpen() ? book.notebook() : null),
  )
  const name = () => {
    if (isOpen()) return book.notebook().name
    const found = readable()
    return found === undefined || isProblem(found) ? props.notebook : found.notebook.name
  }

  async function withState(seq: number, work: (state: Notebook) => Promise<Problem | null>): Promise<void> {
    const state = await desk.state(props.notebook, seq)
    setProblem(isProblem(state) ? state : await work(state))
  }

  const backTo = (seq: number, at: number) =>
    withState(seq, async (state) => {
      if (hasOwnParts(state)) await prepareOwnWorksheets()
      const refused = book.dispatch(goBack(book.notebook(), state))
      if (refused) return refused
      announce(say('keeping.went_back', { when: timeText(at) }))
      await refetch()
      return null
    })

  async function openCopy(notebook: Notebook, copied: string): Promise<Problem | null> {
    const refused = await desk.add(copyNotebook(notebook, copied.slice(0, 200)))
    if (!refused) goTo({ page: 'worksheets' })
    return refused
  }

  return (
    <section>
      <h2>{say('keeping.states', { name: name() })}</h2>
      <p class="intro">{say(isOpen() ? 'keeping.states_intro' : 'keeping.states_damaged')}</p>
      <Problems problems={problem() ? [problem() as Problem] : []} />
      <ol class="lines">
        <Show when={isOpen() && states().length > 0}>
          <li>
            <span class="name">{say('keeping.now')}</span>
            <span class="changes">{changes().get('now') ?? say('keeping.reading')}</span>
          </li>
        </Show>
        <Show when={readable()} keyed>
          {(found) => (
            <Show when={!isProblem(found) && found} keyed>
              {({ notebook, seq, head }) => (
                <li>
                  <span class="name">{say('keeping.readable', { seq, head })}</span>
                  <span class="changes" />
                  <button
                    type="button"
                    class="act"
                    onClick={async () =>
                      setProblem(
                        await openCopy(notebook, say('keeping.readable_name', { name: notebook.name.slice(0, 150) })),
                      )
                    }
                  >
                    {say('keeping.copy')}
                  </button>
                </li>
              )}
            </Show>
          )}
        </Show>
        <For each={states()} fallback={<li class="quiet">{say('keeping.states_none')}</li>}>
          {({ seq, at }) => (
            <li>
              <time class="name" datetime={new Date(at).toISOString()}>
                {timeText(at)}
              </time>
              <span class="changes">{changes().get(seq) ?? say('keeping.reading')}</span>
              <span class="acts">
                <Show when={isOpen()}>
                  <button
                    type="button"
                    class="act"
                    disabled={!book.writable()}
                    aria-label={say('keeping.go_back_to', { when: timeText(at) })}
                    onClick={() => void backTo(seq, at)}
                  >
                    {say('keeping.go_back')}
                  </button>
                </Show>
                <button
                  type="button"
                  class="act"
                  aria-label={say('keeping.copy_of', { when: timeText(at) })}
                  onClick={() =>
                    void withState(seq, (state) =>
                      openCopy(state, say('keeping.copy_name', { name: state.name.slice(0, 150), when: timeText(at) })),
                    )
                  }
                >
                  {say('keeping.copy')}
                </button>
              </span>
            </li>
          )}
        </For>
      </ol>
    </section>
  )
}
