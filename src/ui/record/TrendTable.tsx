import { createSignal, For, Show } from 'solid-js'
import type { Measured } from '../../record/measured'
import { say } from '../../words/say'
import { Wide } from '../shell/Wide'
import type { RecordView } from './createRecord'
import { dateWords } from './dateWords'

/** Rows at most; the CSV of the record has all. */
const MOST = 200

/** The figures behind the lines, made when they are asked for. */
export function TrendTable(props: { view: RecordView; tests: readonly Measured[]; quantities: readonly string[] }) {
  const [open, setOpen] = createSignal(false)
  const figure = ({ figures }: Measured, quantity: string) => {
    const value = figures.get(quantity)
    return value === undefined ? '' : props.view.words(quantity, value)
  }
  return (
    <details class="trend-table" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{say('record.trends.table')}</summary>
      <Show when={open()}>
        <Show when={props.tests.length > MOST}>
          <p class="quiet">{say('record.trends.last', { count: MOST, all: props.tests.length })}</p>
        </Show>
        <Wide label={say('record.trends')}>
          <table>
            <thead>
              <tr>
                <th scope="col">{say('record.trends.test')}</th>
                <For each={props.quantities}>
                  {(quantity) => (
                    <th scope="col" class="figure">
                      {props.view.label(quantity)}
                    </th>
                  )}
                </For>
              </tr>
            </thead>
            <tbody>
              <For each={props.tests.slice(-MOST).toReversed()}>
                {(test) => (
                  <tr>
                    <th scope="row">{dateWords(test.date)}</th>
                    <For each={props.quantities}>{(quantity) => <td class="figure">{figure(test, quantity)}</td>}</For>
                  </tr>
                )}
              </For>
            </tbody>
          </table>
        </Wide>
      </Show>
    </details>
  )
}
