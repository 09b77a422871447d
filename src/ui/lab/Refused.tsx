import { For, Show } from 'solid-js'
import type { RowOutcome } from '../../intake/outcome'
import { say, sentence } from '../../words/say'
import { downloadText } from '../notebooks/downloadText'

const MOST = 50

/** The rows that could not be read: which, where in it, what was found and why. */
export function Refused(props: {
  refused: readonly Extract<RowOutcome, { kind: 'refused' }>[]
  /** in the whole file */
  count: number
  csv: string
  file: string
}) {
  return (
    <Show when={props.count > 0}>
      <section>
        <h2>{say('page.lab.refused', { count: props.count })}</h2>
        <ul class="problems">
          <For each={props.refused.slice(0, MOST)}>
            {(outcome) => (
              <For each={outcome.problems}>
                {(trouble) => <li>{sentence({ ...trouble, facts: { row: outcome.row, ...trouble.facts } })}</li>}
              </For>
            )}
          </For>
          <Show when={props.count > MOST}>
            <li>{say('page.problems_more', { count: props.count - MOST })}</li>
          </Show>
        </ul>
        <div class="acts">
          <button
            type="button"
            class="act"
            onClick={() => downloadText(`${props.file}.refused.csv`, props.csv, 'text/csv')}
          >
            {say('page.lab.save_refused')}
          </button>
        </div>
      </section>
    </Show>
  )
}
