import { createResource, createSignal, For, Show } from 'solid-js'
import { isProblem, type Problem } from '../../words/problem'
import { say } from '../../words/say'
import { Problems } from '../notebooks/Problems'
import { placeLink } from '../shell/place'
import { whenWords } from './fileFacts'
import { withLabStore } from './labStore'

/** The lab files that this browser keeps: to open again, or to delete. */
export function KeptFiles() {
  const [kept, { refetch }] = createResource(() => withLabStore((store) => store.list()))
  const [problem, setProblem] = createSignal<Problem | null>(null)
  const [leaving, setLeaving] = createSignal('')
  const list = () => {
    const now = kept()
    return now === undefined || isProblem(now) ? [] : now
  }

  async function remove(id: string): Promise<void> {
    if (leaving() !== id) return void setLeaving(id)
    setLeaving('')
    const trouble = await withLabStore((store) => store.remove(id))
    setProblem(trouble ?? null)
    if (!trouble) void refetch()
  }

  return (
    <Show when={list().length > 0}>
      <section>
        <h2>{say('page.lab.kept')}</h2>
        <Problems problems={problem() ? [problem() as Problem] : []} />
        <ul class="lines">
          <For each={list()}>
            {({ id, name, account, read }) => (
              <li>
                <a class="name" href={placeLink({ page: 'lab', part: id })}>
                  {name}
                </a>
                <span class="when">
                  {say('page.lab.kept_what', { samples: account.samples, when: whenWords(read) })}
                </span>
                <a
                  class="act"
                  href={placeLink({ page: 'lab', part: id })}
                  aria-label={`${say('page.lab.open')} ${name}`}
                >
                  {say('page.lab.open')}
                </a>
                <button
                  type="button"
                  class="act"
                  classList={{ warm: leaving() === id }}
                  aria-label={`${say(leaving() === id ? 'page.lab.forget_sure' : 'page.lab.forget')} ${name}`}
                  onClick={() => remove(id)}
                  onBlur={() => setLeaving('')}
                >
                  {say(leaving() === id ? 'page.lab.forget_sure' : 'page.lab.forget')}
                </button>
              </li>
            )}
          </For>
        </ul>
      </section>
    </Show>
  )
}
