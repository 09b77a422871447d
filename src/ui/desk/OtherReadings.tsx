import { createSignal, createUniqueId, For, onMount, Show } from 'solid-js'
import { believe } from '../../notebook/believe'
import type { Reading } from '../../notebook/notebook'
import { methodsOf } from '../../study/methods'
import { formatValue } from '../../units/format'
import { say, sentence } from '../../words/say'
import { decimalsOf } from '../decimalsOf'
import { labelInside } from '../labelOf'
import { useBook } from '../shell/book'
import { unitWords } from '../unitWords'
import { moveOn } from './chain'
import { commitReadings, presentReadings } from './commitReading'
import { createEntry } from './createEntry'
import { exactnessOf, exactWords, methodWords } from './exactness'

/** Several readings of one quantity side by side: which is believed, which to believe and why; the choice is the reader's. */
export function OtherReadings(props: { quantity: string; adding: boolean; onAdding: (adding: boolean) => void }) {
  const book = useBook()
  const name = createUniqueId()
  const row = () => book.catalog().quantities.get(props.quantity)?.row
  const label = () => labelInside(props.quantity, row())
  const all = () => presentReadings(book, props.quantity)
  const advice = () => believe(props.quantity, all(), exactnessOf(props.quantity))
  const words = (reading: Reading | undefined) => {
    const of = row()
    if (!of || reading === undefined || reading.kind === 'choice') return ''
    const unit = book.unit(props.quantity)
    const sign = reading.kind === 'value' ? '' : reading.side === 'above' ? '> ' : '< '
    const figure = `${sign}${formatValue(reading.canonical, of.unit, unit, decimalsOf(of))} ${unitWords(unit)}`.trim()
    return reading.method === undefined ? figure : `${figure} (${methodWords(reading.method)})`
  }
  const put = (next: readonly Reading[]) => commitReadings(book, props.quantity, next)
  const first = (reading: Reading) => put([reading, ...all().filter((one) => one !== reading)])

  return (
    <>
      <Show when={all().length > 1}>
        <fieldset class="others" disabled={!book.writable()}>
          <legend class="quiet">{say('page.desk.readings_of', { quantity: label() })}</legend>
          <For each={all()}>
            {(reading, at) => (
              <p>
                <label>
                  <input type="radio" name={name} checked={at() === 0} onChange={() => first(reading)} />
                  <span>{words(reading)}</span>
                </label>
                <span class="quiet">
                  {reading.kind === 'choice' ? '' : exactWords(book, props.quantity, reading.method, reading.canonical)}
                </span>
                <Show when={at() === 0}>
                  <span class="quiet">{say('page.desk.believed')}</span>
                </Show>
                <button
                  type="button"
                  class="link"
                  aria-label={say('page.desk.take_out_this', { reading: words(reading) })}
                  onClick={() => put(all().filter((one) => one !== reading))}
                >
                  {say('page.desk.take_out')}
                </button>
              </p>
            )}
          </For>
          <Show when={advice()}>
            {(now) => (
              <p class="advice" aria-live="polite">
                {say(`page.desk.advice.${now().why}`, { reading: words(all()[now().best]) })}{' '}
                {say(`page.desk.advice.${now().apart ? 'apart' : 'agree'}`)}
              </p>
            )}
          </Show>
        </fieldset>
      </Show>
      <Show when={props.adding}>
        <Another
          quantity={props.quantity}
          onAdd={(reading) => put([...all(), reading])}
          onDone={(from) => {
            moveOn(from)
            props.onAdding(false)
          }}
        />
      </Show>
    </>
  )
}

/** The line in which a further reading is typed. */
function Another(props: {
  quantity: string
  onAdd: (reading: Reading) => ReturnType<typeof commitReadings>
  onDone: (from: Element) => void
}) {
  const book = useBook()
  const id = createUniqueId()
  const [method, setMethod] = createSignal('')
  let input: HTMLInputElement | undefined
  const row = () => book.catalog().quantities.get(props.quantity)?.row
  const entry = createEntry({
    quantity: props.quantity,
    field: `${props.quantity}+`,
    stands: () => null,
    commit(cell) {
      if (cell?.kind !== 'value' && cell?.kind !== 'limit') return null
      const why = props.onAdd(method() === '' ? cell : { ...cell, method: method() })
      if (why === null && input) props.onDone(input)
      return why
    },
    stay: () => true,
  })
  onMount(() => input?.focus())

  return (
    <div class="line">
      <label for={id}>{say('page.desk.another_of', { quantity: labelInside(props.quantity, row()) })}</label>
      <select
        class="before"
        aria-label={say('page.desk.method_of', { quantity: labelInside(props.quantity, row()) })}
        onChange={(event) => setMethod(event.currentTarget.value)}
      >
        <option value="">{say('page.desk.method_unsaid')}</option>
        <For each={methodsOf(props.quantity)}>
          {(test) => <option value={test.method}>{methodWords(test.method)}</option>}
        </For>
      </select>
      <input
        ref={input}
        id={id}
        type="text"
        class="field"
        data-desk={`${props.quantity}+`}
        inputmode="decimal"
        autocomplete="off"
        value={entry.text()}
        aria-invalid={entry.fault() !== null}
        aria-describedby={`${id}-notes`}
        {...entry.input}
      />
      <span class="unit quiet">{unitWords(book.unit(props.quantity))}</span>
      <div class="notes" id={`${id}-notes`} aria-live="polite">
        <Show when={entry.fault()}>{(why) => <p>{sentence(why())}</p>}</Show>
      </div>
    </div>
  )
}
