import { Show } from 'solid-js'
import type { CellPlace } from '../../notebook/cellPlace'
import { labelOf } from '../labelOf'
import { useBook } from '../shell/book'
import { goToCell } from '../shell/goToCell'

/** A quantity's name that leads to its cell in the worksheets; plain where it stands on no worksheet. */
export function ToCell(props: { place: CellPlace; text?: string }) {
  const book = useBook()
  const stands = () => book.rows().some(({ quantity }) => quantity.name === props.place.quantity)
  const text = () =>
    props.text ?? labelOf(props.place.quantity, book.catalog().quantities.get(props.place.quantity)?.row)
  return (
    <Show when={stands()} fallback={text()}>
      <button type="button" class="link" onClick={() => goToCell(book, props.place.scenario, props.place.quantity)}>
        {text()}
      </button>
    </Show>
  )
}
