import { For, Show } from 'solid-js'
import type { Problem } from '../../words/problem'
import { say, sentence } from '../../words/say'

const MOST = 12

/** What is wrong with a file, each with its place and reason. */
export function Problems(props: { problems: readonly Problem[]; intro?: string | undefined }) {
  return (
    <div role="alert">
      <Show when={props.problems.length > 0}>
        <ul class="problems">
          <Show when={props.intro}>{(intro) => <li>{intro()}</li>}</Show>
          <For each={props.problems.slice(0, MOST)}>{(trouble) => <li>{sentence(trouble)}</li>}</For>
          <Show when={props.problems.length > MOST}>
            <li>{say('page.problems_more', { count: props.problems.length - MOST })}</li>
          </Show>
        </ul>
      </Show>
    </div>
  )
}
