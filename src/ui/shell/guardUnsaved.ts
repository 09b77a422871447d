import { onCleanup } from 'solid-js'
import type { Book } from './book'

/** The browser asks before it closes a page on which something is not kept yet. */
export function guardUnsaved(book: Book): void {
  const ask = (event: BeforeUnloadEvent) => {
    const { state } = book.saving()
    if (state === 'saving' || state === 'failed') event.preventDefault()
  }
  addEventListener('beforeunload', ask)
  onCleanup(() => removeEventListener('beforeunload', ask))
}
