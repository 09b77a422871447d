import { For, Show } from 'solid-js'
import type { RowOutcome } from '../../intake/outcome'
import { say, sentence } from '../../words/say'

const MOST = 50

/** The rows that could not be read: which, where in it, what was found and why. */
export function Refused(props: { refused: readonly Extract<RowOutcome, { kind: 'refused' }>[] }) {
  return (
    <Show when={props.refused.length > 0}>
      <section>
        <h2>{say('page.lab.refused', { count: props.refused.length })}</h2>
        <ul class="problems">
          <For each={props.refused.slice(0, MOST)}>
            {(outcome) => (
              <For each={outcome.problems}>
                {(trouble) => <li>{sentence({ ...trouble, facts: { row: outcome.row, ...trouble.facts } })}</li>}
              </For>
            )}
          </For>
          <Show when={props.refused.length > MOST}>
            <li>{say('page.problems_more', { count: props.refused.length - MOST })}</li>
          </Show>
        </ul>
      </section>
    </Show>
  )
}
