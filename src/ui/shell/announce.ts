import { createSignal } from 'solid-js'

const [said, setSaid] = createSignal('')

/** What the page's live region reads out. */
export const announcement = said

export function announce(text: string): void {
  // The same sentence twice in a row must be read twice: an empty region in between makes it a change.
  setSaid('')
  queueMicrotask(() => setSaid(text))
}
