import './assumptions.css'
import { createMemo, For, Show } from 'solid-js'
import { assumptionsOf } from '../../notebook/assumptions'
import { assumptions } from '../../words/en/assumptions'
import { addWords, say } from '../../words/say'
import { labelOf } from '../labelOf'
import { useBook } from '../shell/book'
import { placeLink } from '../shell/place'
import { shownValue } from '../shownValue'

addWords(assumptions)

/** What a scenario assumes, of itself or with the baseline, where its numbers are acted on. Nothing where it assumes nothing. */
export function AssumedNote(props: { scenario: string }) {
  const book = useBook()
  const quantities = createMemo(() => {
    const names = new Set(assumptionsOf(book.notebook(), book.catalog()).map(({ quantity }) => quantity))
    return [...names].filter((name) => book.source(props.scenario, name).cell !== null)
  })
  return (
    <Show when={quantities().length > 0}>
      <p class="assumed-note">
        <a class="link" href={placeLink({ page: 'assumptions' })}>
          {say('page.title.assumptions')}
        </a>
        {'. '}
        {say('assumptions.rests')}{' '}
        <For each={quantities()}>
          {(name, at) => (
            <>
              {at() > 0 ? ', ' : ''}
              {labelOf(name, book.catalog().quantities.get(name)?.row)} {shownValue(book, props.scenario, name)}
            </>
          )}
        </For>
      </p>
    </Show>
  )
}
