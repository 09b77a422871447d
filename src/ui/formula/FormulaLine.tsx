import { createEffect, createSignal, createUniqueId, For, on, onCleanup, onMount, Show } from 'solid-js'
import { formula } from '../../words/en/formula'
import { functions } from '../../words/en/functions'
import { addWords, say, sentence } from '../../words/say'
import { useBook } from '../shell/book'
import './formula.css'
import { callAt, type Signature } from './callAt'
import { type Candidate, candidates } from './candidates'
import { createFormulaView, type FormulaView, type FormulaViewOptions } from './createFormulaView'
import { type Fault, faultsIn } from './faultsIn'

addWords({ ...functions, ...formula })

export type FormulaLineProps = Pick<FormulaViewOptions, 'text' | 'selection' | 'label' | 'onChange' | 'onKey'> & {
  /** the unit of the row; null where nothing is asked of it */
  readonly unit: () => string | null
  /** in which unit what it gives is counted, where the row shows another */
  readonly counts: () => string
  readonly autofocus?: boolean
  readonly ref?: (view: FormulaView) => void
}

/** A formula being written: the line, the function that the caret is in, what is wrong. */
export function FormulaLine(props: FormulaLineProps) {
  const book = useBook()
  const [signature, setSignature] = createSignal<Signature | null>(null)
  const [faults, setFaults] = createSignal<readonly Fault[]>([])
  const helpId = createUniqueId()
  let host: HTMLDivElement | undefined
  let view: FormulaView | undefined
  let known: readonly Candidate[] | undefined

  onMount(() => {
    if (!host) return
    view = createFormulaView({
      host,
      text: props.text,
      selection: props.selection,
      label: props.label,
      candidates() {
        known ??= candidates(book.notebook(), book.catalog())
        return known
      },
      faults: (text) => faultsIn(text, { notebook: book.notebook(), catalog: book.catalog(), unit: props.unit() }),
      onChange(text) {
        setFaults([])
        props.onChange(text)
      },
      onPlace: (text, at) => setSignature(callAt(text, at)),
      onFaults: setFaults,
      onKey: (key, shift) => props.onKey(key, shift),
    })
    props.ref?.(view)
    if (props.autofocus) view.focus()
  })
  createEffect(on(props.unit, () => view?.judge(), { defer: true }))
  onCleanup(() => view?.destroy())

  return (
    <div class="formula">
      <div class="line" ref={host} />
      <Show when={signature()}>
        {(call) => (
          <p class="signature" id={helpId}>
            <span class="code">
              {call().name}(
              <For each={call().parameters}>
                {(parameter, at) => (
                  <>
                    {at() > 0 ? '; ' : ''}
                    <span classList={{ current: at() === call().current }}>{parameter}</span>
                  </>
                )}
              </For>
              )
            </span>
            <Show when={call().gives}>
              {(unit) => <span class="gives">{say('formula.gives', { unit: unit() })}</span>}
            </Show>
            <span class="says">{call().says}</span>
          </p>
        )}
      </Show>
      <p role="status" class="counts quiet">
        {props.counts()}
      </p>
      <div role="status" class="faults">
        <Show when={faults()[0]}>{(fault) => <p class="warm">{sentence(fault().problem)}</p>}</Show>
      </div>
    </div>
  )
}
