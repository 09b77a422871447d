import { createSignal, createUniqueId, For, Show } from 'solid-js'
import { hasValue } from '../../engine/outcome'
import type { Problem } from '../../words/problem'
import { say } from '../../words/say'
import { Problems } from '../notebooks/Problems'
import { useBook } from '../shell/book'
import { shownValue } from '../shownValue'
import { ChoiceField } from './ChoiceField'
import { moveOn } from './chain'
import { type Asking, PoolEntry } from './PoolEntry'
import { ProductField } from './ProductField'
import { useDeskPlace } from './placeContext'
import { TargetField } from './TargetField'

/** What each shape is measured by. */
const MEASURES: Readonly<Record<string, readonly string[]>> = {
  rectangle: ['length', 'width', 'depth_shallow', 'depth_deep'],
  round: ['diameter', 'depth_shallow', 'depth_deep'],
  oval: ['length', 'width', 'depth_shallow', 'depth_deep'],
  stadium: ['length', 'width', 'depth_shallow', 'depth_deep'],
  freeform: ['surface_area', 'depth_shallow', 'depth_deep'],
}

/** The pool itself: asked once, shown in a line afterwards. */
export function PoolForm(props: { open: boolean; asking: Asking }) {
  const book = useBook()
  const baseline = () => book.baseline()
  const choice = (quantity: string) => {
    const { cell } = book.source(baseline(), quantity)
    return cell?.kind === 'choice' ? cell.id : null
  }
  const metered = () => book.source(baseline(), 'measured_volume').cell?.kind === 'value'
  const measures = () => MEASURES[choice('shape') ?? ''] ?? []
  const summary = () =>
    [
      book.notebook().place,
      shownValue(book, baseline(), 'volume'),
      ...['shell', 'setting'].map((name) => shownValue(book, baseline(), name)),
    ]
      .filter(Boolean)
      .join(' · ')

  return (
    <details class="pool" open={props.open}>
      <summary>
        <h2>{book.notebook().name}</h2>
        <span class="quiet">{summary()}</span>
      </summary>
      <TextField part="name" aside />
      <TextField part="place" />
      <PoolEntry
        quantity="measured_volume"
        asking={props.asking}
        label={say('page.desk.volume')}
        hint={metered() ? '' : say('page.desk.volume_or_shape')}
      />
      <Show when={!metered()}>
        <ChoiceField quantity="shape" />
        <For each={measures()}>{(name) => <PoolEntry quantity={name} asking={props.asking} />}</For>
        <Show when={hasValue(book.outcome(baseline(), 'volume'))}>
          <p class="quiet">{say('page.desk.volume_by_shape', { volume: shownValue(book, baseline(), 'volume') })}</p>
        </Show>
      </Show>
      <ChoiceField quantity="shell" />
      <Show when={choice('shell') === 'plaster'}>
        <PoolEntry quantity="shell_age" asking={props.asking} />
      </Show>
      <ChoiceField quantity="setting" />
      <PoolEntry quantity="cell_salt_low" asking={props.asking} />
      <PoolEntry quantity="cell_salt_high" asking={props.asking} />
      <PoolEntry quantity="cell_output" asking={props.asking} />
      <PoolEntry quantity="bag_mass" asking={props.asking} label={say('page.desk.bag')} />
      <ChoiceField quantity="water_body" aside />
      <ChoiceField quantity="use" aside />
      <ChoiceField quantity="sanitizer" aside />
      <ProductField />
      <TargetField />
    </details>
  )
}

/** The notebook's name or place. */
function TextField(props: { part: 'name' | 'place'; aside?: boolean }) {
  const book = useBook()
  const place = useDeskPlace()
  const id = createUniqueId()
  const left = place.left()
  const [typed, setTyped] = createSignal<string | null>(left?.field === props.part && left.text ? left.text : null)
  const [problems, setProblems] = createSignal<readonly Problem[]>([])

  function take(): boolean {
    const text = typed()
    if (text === null) return true
    const why = book.dispatch({ type: 'change_notebook', set: { [props.part]: text.trim() } })
    setProblems(why ? [why] : [])
    if (why === null) setTyped(null)
    return why === null
  }

  return (
    <div class="line">
      <label for={id}>{say(`page.desk.${props.part}`)}</label>
      <input
        id={id}
        type="text"
        class="field text"
        autocomplete="off"
        maxlength={200}
        data-desk={props.aside ? undefined : props.part}
        value={typed() ?? book.notebook()[props.part]}
        disabled={!book.writable()}
        onInput={(event) => {
          setTyped(event.currentTarget.value)
          place.at(props.part, event.currentTarget.value)
        }}
        onFocus={() => place.at(props.part, typed() ?? '')}
        onBlur={() => take()}
        onKeyDown={(event) => {
          if (event.isComposing) return
          if (event.key === 'Escape') setTyped(null)
          else if (event.key !== 'Enter') return
          else if (take()) moveOn(event.currentTarget, event.shiftKey ? -1 : 1)
          event.preventDefault()
        }}
      />
      <Show when={problems().length > 0}>
        <Problems problems={problems()} />
      </Show>
    </div>
  )
}
