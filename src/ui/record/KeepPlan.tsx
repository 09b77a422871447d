import { createSignal, Show } from 'solid-js'
import { say, sentence } from '../../words/say'
import { announce } from '../shell/announce'
import { useBook } from '../shell/book'
import { placeLink } from '../shell/place'
import type { Kept } from './createKept'
import { dateWords } from './dateWords'

/** On the page of the plan: keeps it as it was given, and says when it is. */
export function KeepPlan(props: { record: Kept }) {
  const book = useBook()
  const [refused, setRefused] = createSignal('')

  function keep(): void {
    const trouble = props.record.keep()
    setRefused(trouble ? sentence(trouble) : '')
    if (!trouble) announce(say('record.plan.kept_now'))
  }

  return (
    <div class="acts keep">
      <Show
        when={props.record.kept()}
        fallback={
          <button type="button" class="act" disabled={!book.writable()} onClick={keep}>
            {say('record.plan.keep')}
          </button>
        }
      >
        {(plan) => (
          <p>
            {say('record.plan.kept', { when: dateWords(plan().date) })}{' '}
            <a class="link" href={placeLink({ page: 'record' })}>
              {say('record.plan.see')}
            </a>
          </p>
        )}
      </Show>
      <Show when={refused()}>{(why) => <p class="warm">{why()}</p>}</Show>
    </div>
  )
}
