import { For, Show } from 'solid-js'
import { say } from '../../words/say'

/** Charts to choose from, under one heading. */
export function ChartList<T extends { readonly id: string; readonly name: string }>(props: {
  title: string
  charts: readonly T[]
  chosen: string
  onChoose: (chart: T) => void
}) {
  return (
    <Show when={props.charts.length > 0}>
      <section class="charts">
        <h3>{props.title}</h3>
        <ul aria-label={say('page.study.charts')}>
          <For each={props.charts}>
            {(chart) => (
              <li>
                <button
                  type="button"
                  class="to"
                  aria-current={chart.id === props.chosen ? 'true' : undefined}
                  onClick={() => props.onChoose(chart)}
                >
                  {chart.name}
                </button>
              </li>
            )}
          </For>
        </ul>
      </section>
    </Show>
  )
}
