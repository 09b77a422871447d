import { onCleanup, onMount, Show } from 'solid-js'
import { Portal } from 'solid-js/web'
import { say, sentence } from '../../words/say'
import { commitEntry } from '../grid/commitEntry'
import { useBook } from '../shell/book'
import type { FormulaView } from './createFormulaView'
import { FormulaLine } from './FormulaLine'

/** Below it there is room for the signature and for what is wrong, in pixels. */
const ROOM = 180

/**
 * The formula editor over a cell's light input, which stays below it with the same text: the grid reads that one, and
 * hears from it the keys that lead out of the editor. What was typed until the editor came is taken over with its caret.
 */
export function FormulaPopover(props: {
  input: HTMLInputElement
  label: string
  unit: string
  counts: string
  /** the input gives the focus away, and is not left by it */
  onTaken: () => void
}) {
  const book = useBook()
  let popover: HTMLDivElement | undefined
  let view: FormulaView | undefined
  const start = Math.max((props.input.selectionStart ?? 0) - 1, 0)
  const end = Math.max((props.input.selectionEnd ?? 0) - 1, 0)

  function place(): void {
    if (!popover) return
    const cell = props.input.getBoundingClientRect()
    const { clientWidth, clientHeight } = document.documentElement
    const { width } = popover.getBoundingClientRect()
    popover.style.left = `${Math.max(Math.min(cell.left, clientWidth - width - 8), 8)}px`
    popover.style.top = `${Math.max(Math.min(cell.top - 4, clientHeight - ROOM), 8)}px`
  }

  /** The grid gives the focus to the input that it knows. */
  function back(): void {
    view?.focus()
  }

  onMount(() => {
    props.onTaken()
    popover?.showPopover()
    place()
    addEventListener('scroll', place, { capture: true, passive: true })
    addEventListener('resize', place)
    props.input.addEventListener('focus', back)
  })
  onCleanup(() => {
    removeEventListener('scroll', place, { capture: true })
    removeEventListener('resize', place)
    props.input.removeEventListener('focus', back)
  })

  function onKey(key: string, shiftKey: boolean): boolean {
    const event = new KeyboardEvent('keydown', { key, shiftKey, bubbles: true, cancelable: true })
    props.input.dispatchEvent(event)
    // What could not be taken stays open, with the caret where it was.
    if (book.selection.editing()) view?.focus()
    return event.defaultPrevented
  }

  return (
    <Portal mount={document.getElementById('page') ?? document.body}>
      <div
        ref={popover}
        class="formula-popover"
        popover="manual"
        onFocusOut={(event) => {
          if (!popover?.contains(event.relatedTarget as Node | null)) commitEntry(book, props.input.value)
        }}
      >
        <span class="equals" aria-hidden="true">
          =
        </span>
        <FormulaLine
          ref={(made) => {
            view = made
            // It is made after the popover was shown.
            made.focus()
            made.offer()
          }}
          text={props.input.value.slice(1)}
          selection={[start, end]}
          label={[props.label, props.counts].filter((text) => text !== '').join(', ')}
          unit={() => props.unit}
          counts={() => props.counts}
          onChange={(text) => {
            book.selection.setFault(null)
            props.input.value = `=${text}`
          }}
          onKey={onKey}
        />
        <Show when={book.selection.fault()}>
          {/* The input below says it aloud. */}
          {(fault) => (
            <div class="fault" aria-hidden="true">
              <p class="warm">{sentence(fault())}</p>
            </div>
          )}
        </Show>
        <p class="keys quiet">{say('formula.keys')}</p>
      </div>
    </Portal>
  )
}
