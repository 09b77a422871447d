import { createResource, createSignal, Show } from 'solid-js'
import { askToKeep, promised, room } from '../../storage/promise'
import { say } from '../../words/say'
import { bytesText } from './bytesText'

/** Whether the browser may clear what is kept here, and how much of its room is used. */
export function Promised() {
  const [kept, { mutate }] = createResource(promised)
  const [used] = createResource(room)
  const [refused, setRefused] = createSignal(false)

  async function ask(): Promise<void> {
    const answer = await askToKeep()
    mutate(answer)
    setRefused(answer !== 'kept')
  }

  return (
    <section>
      <h2>{say('keeping.promise')}</h2>
      <Show when={kept()}>
        {(answer) => (
          <p role="status">
            {say(`keeping.promise.${answer()}`)} {refused() ? say('keeping.promise.refused') : ''}
          </p>
        )}
      </Show>
      <Show when={used()}>
        {(now) => (
          <p class="quiet">{say('keeping.room', { used: bytesText(now().used), quota: bytesText(now().quota) })}</p>
        )}
      </Show>
      <Show when={kept() === 'may_be_cleared'}>
        <div class="acts">
          <button type="button" class="act" onClick={() => void ask()}>
            {say('keeping.promise.ask')}
          </button>
        </div>
      </Show>
    </section>
  )
}
