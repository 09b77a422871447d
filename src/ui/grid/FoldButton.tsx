import type { JSX } from 'solid-js'
import { useBook } from '../shell/book'
import { setFold } from './setFold'

/** The id of the button that folds a part; the focus goes there while the part is folded. */
export function foldButton(id: string): string {
  return `fold-${id}`
}

/** A heading that folds what is under it. Only on a folded one do the arrow keys stop; else its keys work in the cells. */
export function FoldButton(props: { id: string; children: JSX.Element }) {
  const book = useBook()
  const folded = () => book.arrangement.folded().has(props.id)
  const isHere = () => book.selection.isLine(`fold:${props.id}`)
  return (
    <button
      type="button"
      class="fold"
      id={foldButton(props.id)}
      aria-expanded={!folded()}
      tabindex={isHere() ? 0 : -1}
      onClick={() => setFold(book, props.id, !folded())}
    >
      <span class="sign" aria-hidden="true">
        {folded() ? '+' : '−'}
      </span>
      {props.children}
    </button>
  )
}
