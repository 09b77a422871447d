import { Show } from 'solid-js'
import { say } from '../../words/say'
import { openEditor } from '../grid/openEditor'
import { labelOf } from '../labelOf'
import { useBook } from '../shell/book'
import { shownValue } from '../shownValue'

/** Where the margin is a drawer: the selected cell in one line at the foot, and the way to its margin. */
export function Peek(props: { onExplain: () => void }) {
  const book = useBook()
  return (
    <section class="peek" aria-label={say('page.peek')}>
      <Show when={book.selection.cell()}>
        {(cell) => (
          <>
            <span class="serif">{labelOf(cell().row.quantity.name, cell().row.quantity.row)}</span>
            <span class="value">{shownValue(book, cell().scenario, cell().row.quantity.name)}</span>
            <Show when={'input' in cell().row.quantity.row && book.writable()}>
              <button type="button" class="act" onClick={() => openEditor(book)}>
                {say('page.edit')}
              </button>
            </Show>
          </>
        )}
      </Show>
      <button type="button" class="act" aria-controls="margin" onClick={() => props.onExplain()}>
        {say('page.explain')}
      </button>
    </section>
  )
}
