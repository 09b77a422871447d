import { createEffect, createMemo, createSignal, For, on, Show } from 'solid-js'
import { LOCKED } from '../../functions/registry'
import { functions } from '../../words/en/functions'
import { pageFunctions } from '../../words/en/page-functions'
import { addWords, say } from '../../words/say'
import { usePlace } from '../shell/place'
import { FunctionEntry } from './FunctionEntry'
import { matches } from './matches'

addWords({ ...functions, ...pageFunctions })

/** Every locked function, searchable: the same registry that the engine computes with. */
export function FunctionsPage() {
  const [wanted, setWanted] = createSignal('')
  const found = createMemo(() => LOCKED.filter((f) => matches(f, wanted())))
  const place = usePlace()

  createEffect(
    on(place, ({ part }) => {
      if (part === undefined) return
      setWanted('')
      document.getElementById(`function-${part}`)?.scrollIntoView({ block: 'start' })
    }),
  )

  return (
    <article class="text-page functions">
      <h1>{say('page.title.functions')}</h1>
      <p class="intro">{say('page.functions.intro')}</p>
      <form role="search" onSubmit={(event) => event.preventDefault()}>
        <label>
          {say('page.functions.find')}
          <input
            type="search"
            class="field"
            value={wanted()}
            autocomplete="off"
            onInput={(event) => setWanted(event.currentTarget.value)}
          />
        </label>
      </form>
      <p class="quiet" role="status">
        {found().length === 0 ? say('page.functions.none') : say('page.functions.count', { count: found().length })}
      </p>
      <For each={found()}>{(f) => <FunctionEntry function={f} />}</For>
      <Show when={found().length === 0}>
        <button type="button" class="act" onClick={() => setWanted('')}>
          {say('page.functions.all')}
        </button>
      </Show>
    </article>
  )
}
