import { createMemo, For, Show } from 'solid-js'
import { say, sentence } from '../../words/say'
import { useBook } from '../shell/book'
import { focusCell } from './focusCell'
import { openOver } from './opened'
import type { PasteReport } from './pasteReport'
import { sayPasted } from './sayPasted'

const MOST = 6

/** At the foot of the page: what was taken of what was pasted, and what was not, with the reasons. */
export function PasteReportView(props: { report: PasteReport }) {
  const book = useBook()
  const lines = createMemo(() => sayPasted(props.report))
  const close = () => {
    openOver(null)
    focusCell(book)
  }
  return (
    <section class="pasted" aria-label={say('page.paste.title')}>
      <div>
        <For each={lines()}>{(line) => <p>{line}</p>}</For>
        <ul>
          <Show when={props.report.whole}>{(why) => <li>{sentence(why())}</li>}</Show>
          <For each={props.report.refused.slice(0, MOST)}>
            {({ scenario, why }) => <li>{say('page.paste.one_refused', { scenario, why: sentence(why) })}</li>}
          </For>
          <Show when={props.report.refused.length > MOST}>
            <li>{say('page.paste.more_refused', { count: props.report.refused.length - MOST })}</li>
          </Show>
        </ul>
      </div>
      <button type="button" class="act" onClick={close}>
        {say('page.close')}
      </button>
    </section>
  )
}
