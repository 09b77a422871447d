import { Show } from 'solid-js'
import { own } from '../../notebook/own'
import { say } from '../../words/say'
import { useBook } from '../shell/book'
import { dateWords } from './dateWords'
import { additionOf } from './keepPlan'
import { thisMinute } from './today'

/** Beside a step of a kept plan: marks it as done, which writes down what was added. */
export function StepDone(props: { plan: string; at: number }) {
  const book = useBook()
  const step = () => own(book.notebook().plans, props.plan)?.steps[props.at]
  const done = () =>
    Object.values(book.notebook().additions).find(({ plan, step: at }) => plan === props.plan && at === props.at)
  const addition = () => {
    const given = step()
    return given === undefined ? null : additionOf(props.plan, props.at, given, thisMinute())
  }
  return (
    <Show
      when={done()}
      fallback={
        <Show when={addition()}>
          {(made) => (
            <button
              type="button"
              class="act"
              disabled={!book.writable()}
              aria-label={say('record.step.done_for', { step: step()?.says ?? '' })}
              onClick={() => book.dispatch({ type: 'put_addition', addition: made() })}
            >
              {say('record.step.done')}
            </button>
          )}
        </Show>
      }
    >
      {(made) => <p class="quiet">{say('record.step.is_done', { when: dateWords(made().date) })}</p>}
    </Show>
  )
}
