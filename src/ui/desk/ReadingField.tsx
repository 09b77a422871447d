import { createSignal, For, Show } from 'solid-js'
import { hasValue } from '../../engine/outcome'
import type { Cell } from '../../notebook/notebook'
import { keepPreference, preference } from '../../storage/preference'
import { methodsOf } from '../../study/methods'
import { say } from '../../words/say'
import { judge } from '../../worksheet/judge'
import { bandIn } from '../grid/bandIn'
import { labelInside, labelOf } from '../labelOf'
import { useBook } from '../shell/book'
import { commitCell, presentReadings } from './commitReading'
import { EntryField } from './EntryField'
import { exactWords, methodWords } from './exactness'
import { OtherReadings } from './OtherReadings'
import { useDeskPlace } from './placeContext'
import { readingWords } from './readingWords'
import { isUnlikely } from './unlikely'

/** One reading of the bench: figure, unit, the test that gave it and how exact it is, what is to be said of it at once. */
export function ReadingField(props: { quantity: string; notes: readonly string[]; asked: boolean }) {
  const book = useBook()
  const [another, setAnother] = createSignal(useDeskPlace().left()?.field === `${props.quantity}+`)
  const row = () => book.catalog().quantities.get(props.quantity)?.row
  const cell = () => book.source(book.baseline(), props.quantity).cell
  const methods = () => methodsOf(props.quantity)
  const usual = () => preference(`desk.method.${props.quantity}`) ?? ''
  const [chosen, setChosen] = createSignal(usual())
  const method = () => {
    const now = cell()
    return now?.kind === 'value' || now?.kind === 'limit' ? (now.method ?? '') : chosen()
  }

  const unlikely = (now: Cell | null) => isUnlikely(row(), now)
  const notes = () => {
    const now = cell()
    if (now?.kind === 'limit')
      return [say(`page.desk.limit_${now.side}`, { value: readingWords(book, props.quantity) })]
    if (now?.kind === 'value' && unlikely(now)) {
      const name = labelOf(props.quantity, row())
      return [say('page.desk.unlikely', { name, value: readingWords(book, props.quantity) }), ...props.notes]
    }
    return props.notes
  }
  const side = () => {
    const of = row()
    const outcome = book.outcome(book.baseline(), props.quantity)
    const band = of && bandIn(book, of, book.baseline())
    if (!band || !hasValue(outcome) || typeof outcome.value !== 'number') return ''
    return say(`page.side.${judge(outcome.value, band)}`)
  }

  function commit(next: Cell | null) {
    const test = chosen()
    const named = test !== '' && (next?.kind === 'value' || next?.kind === 'limit') ? { ...next, method: test } : next
    return commitCell(book, props.quantity, named)
  }

  function choose(test: string): void {
    setChosen(test)
    keepPreference(`desk.method.${props.quantity}`, test)
    const now = cell()
    if (now?.kind !== 'value' && now?.kind !== 'limit') return
    const { method: _, ...bare } = now
    commitCell(book, props.quantity, test === '' ? bare : { ...bare, method: test })
  }

  return (
    <div class="reading" role="group" aria-label={labelOf(props.quantity, row())}>
      <EntryField
        quantity={props.quantity}
        notes={notes()}
        commit={commit}
        stay={(now) => unlikely(now) || (now !== null && props.asked)}
        onPlus={() => setAnother(presentReadings(book, props.quantity).length > 0)}
      >
        <Show when={methods().length > 0} fallback={<span class="method" />}>
          <span class="method">
            <select
              aria-label={say('page.desk.method_of', { quantity: labelInside(props.quantity, row()) })}
              disabled={!book.writable()}
              onChange={(event) => choose(event.currentTarget.value)}
            >
              <option value="">{say('page.desk.method_unsaid')}</option>
              <For each={methods()}>
                {(test) => (
                  <option value={test.method} selected={test.method === method()} title={test.source}>
                    {methodWords(test.method)}
                  </option>
                )}
              </For>
            </select>
            <span class="quiet">{exactWords(book, props.quantity, method(), figureOf(cell()))}</span>
          </span>
        </Show>
        <span class="side">
          <Show when={side()}>
            {(word) => <span classList={{ warm: word() !== say('page.side.within') }}>{word()}</span>}
          </Show>
          <Show when={methods().length > 0 && !another() && presentReadings(book, props.quantity).length > 0}>
            <button
              type="button"
              class="link"
              aria-label={say('page.desk.another_of', { quantity: labelInside(props.quantity, row()) })}
              disabled={!book.writable()}
              onClick={() => setAnother(true)}
            >
              {say('page.desk.another')}
            </button>
          </Show>
        </span>
      </EntryField>
      <Show when={methods().length > 0}>
        <OtherReadings quantity={props.quantity} adding={another()} onAdding={setAnother} />
      </Show>
    </div>
  )
}

function figureOf(cell: Cell | null): number {
  return cell?.kind === 'value' || cell?.kind === 'limit' ? cell.canonical : 0
}
