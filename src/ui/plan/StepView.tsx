import { For, type JSX, Show } from 'solid-js'
import type { Step } from '../../planner/step'
import { say } from '../../words/say'
import {
  labelledWords,
  money,
  planSentence,
  quantityLabel,
  quantityWords,
  type Reader,
  ruleWords,
  shownWords,
} from './planSentence'

/** What is foretold after a step, in the order of a test bench. */
const FORETOLD = ['ph', 'total_alkalinity', 'calcium_hardness', 'cyanuric_acid', 'salt', 'free_chlorine'] as const

/** One step: what, where and how, the dangers beside it, the wait, and the water after it. */
export function StepView(props: { step: Step; number: number; reader: Reader; children?: JSX.Element }) {
  const sentence = (one: { key: string; facts: Step['says']['facts'] }) => planSentence(props.reader, one)
  const state = () =>
    [
      props.step.pump && say(`page.plan.pump_${props.step.pump}`),
      props.step.cell && say(`page.plan.cell_${props.step.cell}`),
    ].filter(Boolean)
  const wait = () => (props.step.wait > 0 ? waitWords(props.step.wait) : '')
  const foretold = () =>
    FORETOLD.flatMap((name) => {
      const value = props.step.water.get(name)
      return typeof value === 'number'
        ? [`${say(`page.plan.short.${name}`)} ${quantityWords(props.reader, name, value)}`]
        : []
    })

  return (
    <li class="step" classList={{ stop: props.step.kind === 'gate' }}>
      <span class="number" aria-hidden="true">
        {props.number}
      </span>
      <div class="what">
        <p class="says">{sentence(props.step.says)}</p>
        <For each={props.step.how}>{(how) => <p>{sentence(how)}</p>}</For>
        <For each={props.step.shown ?? []}>
          {(one) => (
            <p class="foretold">
              <span class="quiet">{quantityLabel(props.reader, one.quantity)}:</span>{' '}
              {'value' in one ? shownWords(props.reader, one.quantity, one.value) : say('page.cases.unknown')}
            </p>
          )}
        </For>
        <Show when={state().length > 0}>
          <p class="quiet">{state().join(' ')}</p>
        </Show>
        <Show when={props.step.cost}>
          {(cost) => {
            const next = () => cost().runnerUp
            return (
              <p class="quiet">
                <Show when={next()} fallback={say('page.plan.cost', { cost: money(cost().cost) })}>
                  {(other) =>
                    say('page.plan.cost_next', {
                      cost: money(cost().cost),
                      product: labelledWords(other()),
                      other: money(other().cost),
                    })
                  }
                </Show>
              </p>
            )
          }}
        </Show>
        <Show when={wait()}>{(text) => <p>{text()}</p>}</Show>
        <Show when={props.step.kind === 'dose' || props.step.kind === 'dilute'}>
          <p class="foretold">
            <span class="quiet">{say('page.plan.after')}</span> {foretold().join(' · ')}
            <Show when={props.step.lsi !== undefined}>
              {` · ${say('page.plan.short.lsi')} ${quantityWords(props.reader, 'lsi', props.step.lsi ?? 0)}`}
            </Show>
          </p>
        </Show>
        <Show when={props.step.rules.length > 0}>
          <details>
            <summary>{say('page.plan.why')}</summary>
            <ul>
              <For each={props.step.rules}>{(rule) => <li>{ruleWords(props.reader, rule)}</li>}</For>
            </ul>
          </details>
        </Show>
        {props.children}
      </div>
      <Show when={props.step.cautions.length > 0}>
        <ul class="cautions" aria-label={say('page.plan.cautions')}>
          <For each={props.step.cautions}>{(caution) => <li>{sentence(caution)}</li>}</For>
        </ul>
      </Show>
    </li>
  )
}

function waitWords(hours: number): string {
  if (hours < 1) return say('page.plan.wait_minutes', { minutes: Math.round(hours * 60) })
  return hours < 48
    ? say('page.plan.wait_hours', { hours: Math.round(hours * 10) / 10 })
    : say('page.plan.wait_days', { days: Math.round(hours / 24) })
}
