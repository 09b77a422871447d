import { createMemo, createSignal, Show } from 'solid-js'
import { own } from '../../notebook/own'
import { say } from '../../words/say'
import { useBook } from '../shell/book'
import { dateWords } from './dateWords'
import { additionOf } from './keepPlan'
import { plannedTime } from './plannedTime'

/** Beside a step of a kept plan: marks it as done, which writes down what was added, and when. */
export function StepDone(props: { plan: string; at: number }) {
  const book = useBook()
  let here: HTMLDivElement | undefined
  /** what the reader put in place of the planned time */
  const [chosen, setChosen] = createSignal('')
  const plan = () => own(book.notebook().plans, props.plan)
  const step = () => plan()?.steps[props.at]
  const done = () =>
    Object.values(book.notebook().additions).find(({ plan, step: at }) => plan === props.plan && at === props.at)
  const planned = createMemo(() => {
    const of = plan()
    return of ? plannedTime(book.notebook(), of, props.at) : ''
  })
  const addition = () => {
    const given = step()
    return given === undefined ? null : additionOf(props.plan, props.at, given, chosen() || planned())
  }

  function mark(): void {
    const made = addition()
    if (made === null || book.dispatch({ type: 'put_addition', addition: made })) return
    goOn(here)
  }

  return (
    <div class="step-done" ref={here}>
      <Show
        when={done()}
        fallback={
          <Show when={addition()}>
            <label>
              {say('record.step.when')}
              <input
                class="field"
                type="datetime-local"
                required
                disabled={!book.writable()}
                value={planned()}
                aria-label={say('record.step.when_for', { step: step()?.says ?? '' })}
                onInput={(event) => setChosen(event.currentTarget.value)}
              />
            </label>
            <button
              type="button"
              class="act"
              disabled={!book.writable()}
              aria-label={say('record.step.done_for', { step: step()?.says ?? '' })}
              onClick={mark}
            >
              {say('record.step.done')}
            </button>
          </Show>
        }
      >
        {(made) => (
          <p class="quiet" tabindex={-1}>
            {say('record.step.is_done', { when: dateWords(made().date) })}
          </p>
        )}
      </Show>
    </div>
  )
}

/** The button that was pressed is gone: the focus goes to the next step that can be marked, else to what was written down. */
function goOn(here: HTMLElement | undefined): void {
  const steps = [...(here?.closest('ol')?.querySelectorAll<HTMLElement>('.step-done') ?? [])]
  const later = here ? steps.slice(steps.indexOf(here) + 1) : []
  const next = later.map((one) => one.querySelector<HTMLElement>('.act')).find((button) => button !== null)
  const to = next ?? here?.querySelector<HTMLElement>('p')
  to?.focus()
}
