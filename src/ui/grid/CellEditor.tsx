import { createSignal, lazy, onMount, Show, Suspense } from 'solid-js'
import { say, sentence } from '../../words/say'
import { countsIn } from '../countsIn'
import { labelOf } from '../labelOf'
import { useBook } from '../shell/book'
import { prepareFormulas } from '../shell/formulas'
import { cellName } from '../shell/selection'
import { commitEntry } from './commitEntry'
import type { GridRow } from './gridRow'

// The editor for formulas comes with the first one; what is typed until then stands in the input below it.
const FormulaPopover = lazy(() =>
  Promise.all([import('../formula/FormulaPopover'), prepareFormulas()]).then(([m]) => ({ default: m.FormulaPopover })),
)

/** A line to write in, inside the cell. What cannot be read keeps it open, with the sentence under it. */
export function CellEditor(props: { row: GridRow; scenario: string }) {
  const book = useBook()
  let input: HTMLInputElement | undefined
  const opened = book.selection.editing()
  const [isFormula, setIsFormula] = createSignal(opened?.text.startsWith('=') ?? false)
  const [taken, setTaken] = createSignal(false)
  const faultId = () => `fault-${cellName(props.row.key, props.scenario)}`
  const label = () => say('page.entry_for', { quantity: labelOf(props.row.quantity.name, props.row.quantity.row) })

  onMount(() => {
    if (!input) return
    input.focus()
    if (opened?.fresh) input.setSelectionRange(input.value.length, input.value.length)
    else input.select()
  })

  return (
    <div class="editor" classList={{ long: isFormula() }}>
      <input
        ref={input}
        value={opened?.text ?? ''}
        inputmode="text"
        autocomplete="off"
        spellcheck={false}
        aria-label={label()}
        aria-invalid={book.selection.fault() !== null}
        aria-describedby={book.selection.fault() ? faultId() : undefined}
        onInput={(event) => {
          book.selection.setFault(null)
          setIsFormula(event.currentTarget.value.startsWith('='))
        }}
        onBlur={(event) => {
          if (!taken()) commitEntry(book, event.currentTarget.value)
        }}
      />
      <Show when={isFormula() && input}>
        {(under) => (
          <Suspense>
            <FormulaPopover
              input={under()}
              label={label()}
              unit={props.row.quantity.row.unit}
              counts={countsIn(props.row.quantity.row.unit, book.unit(props.row.quantity.name))}
              onTaken={() => setTaken(true)}
            />
          </Suspense>
        )}
      </Show>
      <div role="alert" id={faultId()} classList={{ unseen: taken() }}>
        <Show when={book.selection.fault()}>{(fault) => sentence(fault())}</Show>
      </div>
    </div>
  )
}
