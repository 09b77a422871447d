import { For, Show } from 'solid-js'
import { type Comparison, isWork, type Outcome } from '../../record/foretold'
import { say } from '../../words/say'
import { Wide } from '../shell/Wide'
import type { RecordView } from './createRecord'
import { dateWords } from './dateWords'

/** Whether the water did what a plan foretold: beyond what the tests can tell, and what may be behind it. */
export function OutcomeView(props: { view: RecordView; outcome: Outcome }) {
  const words = (one: Comparison, value: number) => props.view.words(one.quantity, value)
  const off = () => props.outcome.comparisons.filter(({ side }) => side !== 'as_foretold')
  const done = () => {
    const { done: marked, plan } = props.outcome
    return typeof marked === 'number'
      ? say('record.outcome.done.some', { count: marked, all: plan.steps.filter(isWork).length })
      : say(`record.outcome.done.${marked}`)
  }
  const verdict = (one: Comparison) =>
    say(`record.outcome.${one.side}`, {
      low: words(one, one.expected.low),
      high: words(one, one.expected.high),
    })
  return (
    <>
      <p>
        {say('record.outcome.says', {
          measured: dateWords(props.outcome.measured.date),
          given: dateWords(props.outcome.plan.date),
        })}{' '}
        {done()}
      </p>
      <Wide class="outcome" label={say('record.outcome')}>
        <table>
          <thead>
            <tr>
              <th scope="col">{say('record.outcome.quantity')}</th>
              <th scope="col" class="figure">
                {say('record.outcome.before')}
              </th>
              <th scope="col" class="figure">
                {say('record.outcome.foretold')}
              </th>
              <th scope="col" class="figure">
                {say('record.outcome.measured')}
              </th>
              <th scope="col">{say('record.outcome.verdict')}</th>
            </tr>
          </thead>
          <tbody>
            <For each={props.outcome.comparisons}>
              {(one) => (
                <tr>
                  <th scope="row">{props.view.label(one.quantity)}</th>
                  <td class="figure">{words(one, one.before)}</td>
                  <td class="figure">{words(one, one.foretold)}</td>
                  <td class="figure">{words(one, one.measured)}</td>
                  <td classList={{ warm: one.side !== 'as_foretold' }}>{verdict(one)}</td>
                </tr>
              )}
            </For>
          </tbody>
        </table>
      </Wide>
      <Show when={off().length > 0}>
        <p class="quiet">{say('record.cause.says')}</p>
        <ul class="causes">
          <For each={off()}>
            {(one) => (
              <li>
                <span class="name">{props.view.label(one.quantity)}</span>{' '}
                {say(`record.cause.${one.quantity}.${one.side}`)}
              </li>
            )}
          </For>
        </ul>
      </Show>
    </>
  )
}
