import { createMemo, createSignal, For, Match, Show, Switch } from 'solid-js'
import type { SimpleEdit } from '../../notebook/edit'
import type { Lesson } from '../../notebook/record'
import type { Outcome } from '../../record/foretold'
import { type Event, timeline } from '../../record/timeline'
import { say } from '../../words/say'
import { amountWords, productWords } from '../plan/planSentence'
import type { RecordView } from './createRecord'
import { dateWords } from './dateWords'
import { GivenPlanView } from './GivenPlanView'
import { lessonWords } from './lessonWords'
import { sampleLine } from './sampleLine'

/** So many are shown at first, and with each press more. */
const AT_ONCE = 40

/** Everything in the record, the last first. */
export function Timeline(props: { view: RecordView; outcomes: readonly Outcome[] }) {
  const events = createMemo(() => timeline(props.view.book.notebook()))
  const [most, setMost] = createSignal(AT_ONCE)
  return (
    <>
      <ol class="record-lines">
        <For each={events().slice(0, most())}>
          {(event) => (
            <li>
              <p class="when">
                <span class="kind">{say(`record.kind.${event.kind}`)}</span> {dateWords(event.date)}
              </p>
              <div class="what">
                <Entry view={props.view} event={event} outcomes={props.outcomes} />
              </div>
              <Remove view={props.view} event={event} />
            </li>
          )}
        </For>
      </ol>
      <Show when={events().length > most()}>
        <button type="button" class="act more" onClick={() => setMost(most() + AT_ONCE)}>
          {say('record.earlier', { count: Math.min(AT_ONCE, events().length - most()) })}
        </button>
      </Show>
    </>
  )
}

function Entry(props: { view: RecordView; event: Event; outcomes: readonly Outcome[] }) {
  const { view } = props
  return (
    <Switch>
      <Match when={props.event.kind === 'sample' && props.event.sample}>
        {(sample) => (
          <>
            <p class="name">{sample().name}</p>
            <p>{sampleLine(view, sample())}</p>
            <Show when={sample().origin}>
              {(origin) => <p class="quiet">{say('record.sample.from', { file: origin().file, row: origin().row })}</p>}
            </Show>
          </>
        )}
      </Match>
      <Match when={props.event.kind === 'plan' && props.event.plan}>
        {(plan) => (
          <GivenPlanView view={view} plan={plan()} outcome={props.outcomes.find((one) => one.plan === plan())} />
        )}
      </Match>
      <Match when={props.event.kind === 'addition' && props.event.addition}>
        {(addition) => {
          const asked = () => view.book.notebook().plans[addition().plan ?? '']
          return (
            <>
              <p class="name">
                {say('record.addition', {
                  amount: amountWords(addition().amount, addition().unit, view.reader().profile),
                  product: productWords(addition().product),
                })}
              </p>
              <p class="quiet">
                {[
                  addition().strength !== undefined &&
                    say('record.addition.strength', {
                      strength: addition().strength ?? 0,
                      basis: say(`choice.acid_strength_basis.${addition().basis ?? 'mass_percent'}`),
                    }),
                  asked() && say('record.addition.by_plan', { when: dateWords(asked()?.date ?? '') }),
                  addition().note,
                ]
                  .filter(Boolean)
                  .join(' · ')}
              </p>
            </>
          )
        }}
      </Match>
      <Match when={props.event.kind === 'remark' && props.event.remark}>
        {(remark) => <p class="written">{remark().text}</p>}
      </Match>
      <Match when={props.event.kind === 'lesson' && (props.event.lesson as Lesson)}>
        {(lesson) => (
          <>
            <p>{lessonWords(view, lesson())}</p>
            <p class="quiet">{lesson().note}</p>
          </>
        )}
      </Match>
    </Switch>
  )
}

function Remove(props: { view: RecordView; event: Event }) {
  const edit = (): SimpleEdit | null => {
    const { kind, id } = props.event
    if (kind === 'plan') return { type: 'remove_plan_record', plan: id }
    if (kind === 'addition') return { type: 'remove_addition', addition: id }
    if (kind === 'remark') return { type: 'remove_remark', remark: id }
    return kind === 'lesson' ? { type: 'remove_lesson', lesson: id } : null
  }
  const what = () => `${say(`record.kind.${props.event.kind}`)} ${dateWords(props.event.date)}`
  return (
    <Show when={edit()}>
      {(taking) => (
        <button
          type="button"
          class="act"
          disabled={!props.view.book.writable()}
          aria-label={say('record.remove_what', { what: what() })}
          onClick={() => props.view.book.dispatch(taking())}
        >
          {say('record.remove')}
        </button>
      )}
    </Show>
  )
}
