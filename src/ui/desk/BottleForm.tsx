import { Show } from 'solid-js'
import { presentSample } from '../../notebook/sampleEdits'
import { say } from '../../words/say'
import { useBook } from '../shell/book'
import { moveOn } from './chain'
import { newBottle } from './commitReading'
import { EntryField } from './EntryField'
import { useDeskPlace } from './placeContext'

/** A bottle that was begun so long ago is another visit's, milliseconds. */
const ONE_VISIT = 12 * 3_600_000

/** Whose readings these are: a new bottle, or the one that is open; its age and the two temperatures. */
export function BottleForm(props: { notes: (quantity: string) => readonly string[] }) {
  const book = useBook()
  const place = useDeskPlace()
  const sample = () => presentSample(book.notebook())
  /** begun on this visit: Enter passes the button by */
  const fresh = () => {
    const began = new Date(sample()?.date ?? '').getTime()
    return Date.now() - began < ONE_VISIT
  }

  return (
    <section>
      <h2>{say('page.desk.bottle')}</h2>
      <div class="acts">
        <p class="quiet">
          <Show when={sample()} fallback={say('page.desk.no_bottle')}>
            {(now) => say('page.desk.bottle_now', { name: now().name })}
          </Show>
        </p>
        <Show when={sample()}>
          <button
            type="button"
            class="act"
            data-desk={fresh() ? undefined : 'new_bottle'}
            disabled={!book.writable()}
            onFocus={() => place.at('new_bottle')}
            onKeyDown={(event) => {
              if (event.key !== 'ArrowDown') return
              event.preventDefault()
              moveOn(event.currentTarget)
            }}
            onClick={(event) => {
              const from = event.currentTarget
              book.dispatch(newBottle(book.notebook(), book.catalog()))
              moveOn(from)
            }}
          >
            {say('page.desk.new_bottle')}
          </button>
        </Show>
      </div>
      <EntryField quantity="sample_age" notes={props.notes('sample_age')} />
      <EntryField quantity="temperature" label={say('page.desk.pool_temperature')} notes={props.notes('temperature')} />
      <EntryField quantity="bottle_temperature" notes={props.notes('bottle_temperature')} />
    </section>
  )
}
