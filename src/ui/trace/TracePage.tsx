import './trace.css'
import { createMemo, Show } from 'solid-js'
import type { CellPlace } from '../../notebook/cellPlace'
import { trace } from '../../words/en/trace'
import { addWords, say } from '../../words/say'
import { helpOf, labelOf } from '../labelOf'
import { useBook } from '../shell/book'
import { usePlace } from '../shell/place'
import { cellText } from './outcomeText'
import { ToCell } from './ToCell'
import { StepNotes, Users } from './TraceStep'

addWords(trace)

/** From one number back to the readings that it rests on, and forward to what rests on it, a step at a time. */
export function TracePage() {
  const book = useBook()
  const place = usePlace()
  const cell = createMemo((): CellPlace | null => {
    const { part = '', of = book.baseline() } = place()
    return book.catalog().quantities.has(part) && book.scenario(of) ? { scenario: of, quantity: part } : null
  })
  return (
    <article class="text-page traced">
      <Show when={cell()} keyed fallback={<p>{say('trace.nothing_there')}</p>}>
        {(at) => (
          <>
            <p class="quiet">{say('page.title.trace')}</p>
            <h1>{labelOf(at.quantity, book.catalog().quantities.get(at.quantity)?.row)}</h1>
            <p class="large">{cellText(book, at.scenario, at.quantity)}</p>
            <p>{say('trace.in', { scenario: book.scenario(at.scenario)?.name ?? '' })}</p>
            <p class="intro">{helpOf(at.quantity, book.catalog().quantities.get(at.quantity)?.row)}</p>
            <p>
              <ToCell place={at} text={say('trace.to_cell')} />
            </p>
            <h2>{say('trace.back')}</h2>
            <p class="quiet">{say('trace.units')}</p>
            <div class="step-body root">
              <StepNotes place={at} />
            </div>
            <h2>{say('trace.forward')}</h2>
            <div class="step-body root">
              <Users place={at} />
            </div>
          </>
        )}
      </Show>
    </article>
  )
}
