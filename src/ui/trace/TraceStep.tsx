import { createMemo, createSignal, createUniqueId, For, Show } from 'solid-js'
import { readersOfCell } from '../../notebook/cellGraph'
import type { CellPlace } from '../../notebook/cellPlace'
import { say } from '../../words/say'
import { labelOf } from '../labelOf'
import { useBook } from '../shell/book'
import { placeLink } from '../shell/place'
import { FileColumn } from './FileColumn'
import { cellText } from './outcomeText'
import { placeText, stepOf } from './stepOf'

export type Direction = 'back' | 'forward'

/** A list of cells, each of which can be opened for the cells behind it, or for those that use it. */
export function TraceSteps(props: { places: readonly CellPlace[]; beside: string; direction: Direction }) {
  return (
    <ul class="steps">
      <For each={props.places}>
        {(place) => <TraceStep place={place} beside={props.beside} direction={props.direction} />}
      </For>
    </ul>
  )
}

/** @param props.beside the scenario of the step before: only another one is named */
function TraceStep(props: { place: CellPlace; beside: string; direction: Direction }) {
  const book = useBook()
  const [open, setOpen] = createSignal(false)
  const body = createUniqueId()
  const row = () => book.catalog().quantities.get(props.place.quantity)?.row
  const name = () =>
    placeText(
      labelOf(props.place.quantity, row()),
      props.place.scenario === props.beside ? undefined : book.scenario(props.place.scenario)?.name,
    )
  const value = () => cellText(book, props.place.scenario, props.place.quantity)
  return (
    <li>
      <button
        type="button"
        class="step-name"
        aria-expanded={open()}
        aria-controls={body}
        onClick={() => setOpen(!open())}
      >
        <span class="sign" aria-hidden="true">
          {open() ? '−' : '+'}
        </span>
        <span class="serif">{name()}</span>
        <span class="value">{value()}</span>
      </button>
      <div id={body} class="step-body" hidden={!open()}>
        <Show when={open()}>
          <Show when={props.direction === 'back'} fallback={<Users place={props.place} />}>
            <StepNotes place={props.place} />
          </Show>
        </Show>
      </div>
    </li>
  )
}

/** How a cell's value came about, and below that the cells that it reads. */
export function StepNotes(props: { place: CellPlace }) {
  const book = useBook()
  const step = createMemo(() => stepOf(book, props.place))
  return (
    <>
      <For each={step().notes}>{(note) => <p>{note}</p>}</For>
      <Show when={step().file}>{(file) => <FileColumn file={file()} quantity={props.place.quantity} />}</Show>
      <Show when={step().plan}>
        {(plan) => (
          <p>
            <a class="link" href={placeLink({ page: 'plan', part: plan() })}>
              {say('trace.to_plan')}
            </a>{' '}
            {say('trace.plan_reads')}
          </p>
        )}
      </Show>
      <Show when={step().formula}>
        {(formula) => (
          <p class="code">
            {props.place.quantity} = {formula()}
          </p>
        )}
      </Show>
      <Show when={step().numbers}>{(numbers) => <p class="code quiet">= {numbers()}</p>}</Show>
      <For each={step().functions}>
        {(f) => (
          <p>
            <a class="link" href={placeLink({ page: 'functions', part: f.name })}>
              {f.name}
            </a>{' '}
            {say('trace.function', { version: f.version, source: f.source })}
          </p>
        )}
      </For>
      <Show when={step().source}>{(source) => <p class="quiet">{source()}</p>}</Show>
      <Show when={step().reads.length > 0}>
        <TraceSteps places={step().reads} beside={props.place.scenario} direction="back" />
      </Show>
    </>
  )
}

/** The cells that use a cell, in this scenario and in others. */
export function Users(props: { place: CellPlace }) {
  const book = useBook()
  const users = createMemo(() => readersOfCell(book.notebook(), book.catalog(), props.place))
  return (
    <Show when={users().length > 0} fallback={<p class="quiet">{say('trace.nothing_uses')}</p>}>
      <TraceSteps places={users()} beside={props.place.scenario} direction="forward" />
    </Show>
  )
}
