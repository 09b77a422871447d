import { createSignal, Show } from 'solid-js'
import type { Mapping } from '../../intake/mapping'
import type { Understanding } from '../../intake/understanding'
import type { Problem } from '../../words/problem'
import { say } from '../../words/say'
import { Problems } from '../notebooks/Problems'
import { announce } from '../shell/announce'
import { keepMapping } from './keptMappings'

/** Which kept mapping the file was read by, and the way to keep this reading for files like it. */
export function MappingForm(props: { understanding: Understanding; mapping: Mapping | null; onDrop: () => void }) {
  const [problem, setProblem] = createSignal<Problem | null>(null)
  const [kept, setKept] = createSignal('')

  async function keep(name: string): Promise<void> {
    const trouble = await keepMapping(props.understanding, name)
    setProblem(trouble ?? null)
    if (trouble) return
    setKept(name)
    announce(say('page.lab.mapping_kept', { name }))
  }

  return (
    <>
      <Show when={props.mapping}>
        {(mapping) => (
          <p class="quiet mapping">
            {say('page.lab.mapping_used', { name: mapping().name ?? '' })}{' '}
            <button type="button" class="link" onClick={() => props.onDrop()}>
              {say('page.lab.mapping_drop')}
            </button>
          </p>
        )}
      </Show>
      <form
        class="mapping"
        onSubmit={(event) => {
          event.preventDefault()
          const name = String(new FormData(event.currentTarget).get('name')).trim()
          if (name !== '') void keep(name)
        }}
      >
        <label>
          {say('page.lab.mapping_name')}
          <input class="field" name="name" maxlength={200} autocomplete="off" value={props.mapping?.name ?? ''} />
        </label>
        <button type="submit" class="act">
          {say('page.lab.mapping_keep')}
        </button>
      </form>
      <Show when={kept()}>{(name) => <p class="quiet">{say('page.lab.mapping_kept', { name: name() })}</p>}</Show>
      <Problems problems={problem() ? [problem() as Problem] : []} />
    </>
  )
}
