import { For } from 'solid-js'
import type { Measured } from '../../record/measured'
import { say } from '../../words/say'
import type { RecordView } from './createRecord'
import { dateWords } from './dateWords'

/** The figures behind the lines. */
export function TrendTable(props: { view: RecordView; tests: readonly Measured[]; quantities: readonly string[] }) {
  const figure = ({ figures }: Measured, quantity: string) => {
    const value = figures.get(quantity)
    return value === undefined ? '' : props.view.words(quantity, value)
  }
  return (
    <details class="trend-table">
      <summary>{say('record.trends.table')}</summary>
      <div class="wide" tabindex={0} role="group" aria-label={say('record.trends')}>
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
            <For each={props.tests.toReversed()}>
              {(test) => (
                <tr>
                  <th scope="row">{dateWords(test.date)}</th>
                  <For each={props.quantities}>{(quantity) => <td class="figure">{figure(test, quantity)}</td>}</For>
                </tr>
              )}
            </For>
          </tbody>
        </table>
      </div>
    </details>
  )
}
