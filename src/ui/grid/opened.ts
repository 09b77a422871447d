import { type Accessor, createSignal } from 'solid-js'
import type { GridRow } from './gridRow'
import type { PasteReport } from './pasteReport'

/** What is open over the grid. */
export type Opened =
  | { readonly what: 'find' }
  /** the menu of the selected cells, under the element that opened it */
  | { readonly what: 'cells'; readonly anchor: HTMLElement }
  /** the next press reaches from the selected cell to the one pressed */
  | { readonly what: 'reach' }
  /** the dialog that carries a scenario's water forward */
  | { readonly what: 'carry'; readonly scenario: string }
  /** the form of a row of the reader's own: a new one under this row, or this one */
  | { readonly what: 'row'; readonly act: 'add' | 'change'; readonly row: GridRow }
  | { readonly what: 'report'; readonly report: PasteReport }

const [now, setNow] = createSignal<Opened | null>(null)

export const opened: Accessor<Opened | null> = now

export function openOver(next: Opened | null): void {
  setNow(next)
}
