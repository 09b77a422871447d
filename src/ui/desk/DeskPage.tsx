import './desk.css'
import { createMemo, onMount, Show } from 'solid-js'
import { hasValue } from '../../engine/outcome'
import { desk } from '../../words/en/desk'
import { testMethods } from '../../words/en/test-methods'
import { addWords, say } from '../../words/say'
import { useBook } from '../shell/book'
import { placeLink } from '../shell/place'
import { BottleForm } from './BottleForm'
import { goToField } from './chain'
import { deskChecks } from './deskChecks'
import { PoolForm } from './PoolForm'
import { PoolPicker } from './PoolPicker'
import { PlaceContext } from './placeContext'
import { ReadingsForm } from './ReadingsForm'
import { readingWords } from './readingWords'
import { arriving, createPlace, setArriving } from './resume'

addWords({ ...desk, ...testMethods })

/** The test desk: from a bottle to the customer's sheet without leaving the keyboard. Everything taken here stands in the grid. */
export function DeskPage() {
  const book = useBook()
  const place = createPlace(book.notebook().id)
  const left = place.left()
  const fresh = arriving()
  const number = (quantity: string) => {
    const cell = book.source(book.baseline(), quantity).cell
    return cell?.kind === 'value' ? cell.canonical : undefined
  }
  const checks = createMemo(() => deskChecks(number))
  const notes = (quantity: string) =>
    checks()
      .filter(({ beside }) => beside === quantity)
      .map(({ key, of }) => say(`page.desk.check.${key}`, inWords(of)))
  const asks = (quantity: string) => checks().some(({ beside, asks: stays }) => beside === quantity && stays === true)
  const inWords = (of: readonly string[]) => Object.fromEntries(of.map((name) => [name, readingWords(book, name)]))
  /** asked again where nothing can be worked out without it */
  const unfinished = createMemo((before: boolean) => {
    const volume = book.outcome(book.baseline(), 'volume')
    return before || (volume !== undefined && !hasValue(volume))
  }, fresh === 'place')

  onMount(() => {
    setArriving(null)
    if (fresh === 'bottle') {
      if (!goToField('new_bottle')) goToField('sample_age')
    } else if (!goToField(fresh ?? left?.field ?? 'pool')) goToField('pool')
  })

  return (
    <PlaceContext.Provider value={place}>
      <article class="text-page desk">
        <h1>{say('page.title.desk')}</h1>
        <p class="intro">{say('page.desk.intro')}</p>
        <p class="quiet">{say('page.desk.keys')}</p>
        <Show when={!book.writable()}>
          <p class="warm">{say('page.desk.read_only')}</p>
        </Show>
        <Show when={fresh === null && place.left()?.text}>
          {(text) => (
            <p class="resumed" role="status">
              {say('page.desk.resumed', { text: text() })}
            </p>
          )}
        </Show>
        <PoolPicker />
        <PoolForm open={unfinished()} asking={{ notes, asks }} />
        <BottleForm notes={notes} />
        <ReadingsForm notes={notes} asks={asks} />
        <p class="acts">
          <a class="act main" data-desk="done" href={placeLink({ page: 'handout' })}>
            {say('page.desk.done')}
          </a>
          <a class="act" href={placeLink({ page: 'plan' })}>
            {say('page.desk.to_plan')}
          </a>
          <a class="act" href={placeLink({ page: 'worksheets', part: 'sample' })}>
            {say('page.desk.to_grid')}
          </a>
        </p>
      </article>
    </PlaceContext.Provider>
  )
}
