import { createUniqueId, Show } from 'solid-js'
import type { Problem } from '../../words/problem'
import { sentence } from '../../words/say'
import { useBook } from '../shell/book'
import { unitWords } from '../unitWords'
import { axisOf } from './axis'
import { type Entered, isUnread } from './entered'
import { figureIn } from './figureIn'
import { readFigure } from './readFigure'

/** A field for one value of a quantity in the reader's unit; another unit may be written behind the figure. */
export function FigureField(props: {
  label: string
  quantity: string
  /** canonical; null: nothing there yet; a text that cannot be read stays there, with the reason under it */
  value: Entered
  /** why nothing is not enough here */
  wanted?: Problem
  onChange: (value: Entered) => void
}) {
  const book = useBook()
  const id = createUniqueId()
  const axis = () => axisOf(book, props.quantity)
  const fault = () => (isUnread(props.value) ? props.value.why : props.value === null ? (props.wanted ?? null) : null)
  const shown = () => {
    if (isUnread(props.value)) return props.value.text
    return props.value === null ? '' : figureIn(axis().shown(props.value), 6)
  }

  return (
    <div class="short">
      <label for={id}>
        {props.label} {unitWords(axis().unit)}
        <input
          id={id}
          class="field"
          inputmode="decimal"
          autocomplete="off"
          value={shown()}
          aria-invalid={fault() !== null}
          aria-describedby={fault() ? `${id}-fault` : undefined}
          onChange={(event) => props.onChange(readFigure(book, props.quantity, event.currentTarget.value))}
        />
      </label>
      <Show when={fault()}>
        {(now) => (
          <p class="warm" role="alert" id={`${id}-fault`}>
            {sentence(now())}
          </p>
        )}
      </Show>
    </div>
  )
}
