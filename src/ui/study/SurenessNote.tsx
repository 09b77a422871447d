import '../look/study.css'
import { createMemo, Show } from 'solid-js'
import { hasValue } from '../../engine/outcome'
import { study } from '../../words/en/study'
import { addWords, say } from '../../words/say'
import { useBook } from '../shell/book'
import { placeLink } from '../shell/place'
import type { Cell } from '../shell/selection'
import { createSureness } from './createSureness'

addWords(study)

/** Readings come one by one, and the grid goes first; milliseconds. */
const REST = 400

/** In the margin, under a value: its interval, whether the verdict stands, and the ways to look further. */
export function SurenessNote(props: { cell: Cell }) {
  const book = useBook()
  const quantity = () => props.cell.row.quantity
  const isNumber = createMemo(() => {
    const outcome = book.outcome(props.cell.scenario, quantity().name)
    return hasValue(outcome) && typeof outcome.value === 'number'
  })
  return (
    <Show when={isNumber()}>
      <Sure scenario={props.cell.scenario} quantity={quantity().name} computed={quantity().formula !== null} />
    </Show>
  )
}

function Sure(props: { scenario: string; quantity: string; computed: boolean }) {
  const sure = createSureness(
    () => props.scenario,
    () => props.quantity,
    REST,
  )
  return (
    <div class="sureness">
      <Show when={(sure.doubts()?.length ?? 0) > 0}>
        {/* its place is kept while it is worked out */}
        <p class="interval">
          <Show when={sure.text()}>{(text) => say('page.study.interval_short', { interval: text() })}</Show>
        </p>
        <Show when={sure.open()}>
          <p class="warm">{sure.verdict()}</p>
        </Show>
      </Show>
      <p class="ways">
        <Show when={props.computed}>
          <a class="link" href={placeLink({ page: 'study', part: 'matters' })}>
            {say('page.study.margin.matters')}
          </a>
          <a class="link" href={placeLink({ page: 'study', part: 'solve' })}>
            {say('page.study.margin.solve')}
          </a>
        </Show>
        <a class="link" href={placeLink({ page: 'study', part: 'sweep' })}>
          {say('page.study.margin.sweep')}
        </a>
      </p>
    </div>
  )
}
