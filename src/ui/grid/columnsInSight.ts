import { createVirtualizer } from '@tanstack/solid-virtual'
import { type Accessor, createEffect, createMemo, on } from 'solid-js'

/** Columns drawn beyond each edge of the page. */
const BEYOND = 1

/** The places of the scenarios that are in sight as the page is scrolled sideways. */
export function createColumnsInSight(columns: {
  count: Accessor<number>
  lead: Accessor<number>
  width: (index: number) => number
}): Accessor<readonly number[]> {
  const virtual = createVirtualizer<HTMLElement, HTMLElement>({
    horizontal: true,
    get count() {
      return columns.count()
    },
    get paddingStart() {
      return columns.lead()
    },
    getScrollElement: () => document.getElementById('page'),
    estimateSize: columns.width,
    overscan: BEYOND,
  })
  // It keeps sizes that it has asked for once.
  createEffect(
    on(
      () => Array.from({ length: columns.count() }, (_, index) => columns.width(index)).join(),
      () => virtual.measure(),
      { defer: true },
    ),
  )
  return createMemo(() => virtual.getVirtualItems().map(({ index }) => index))
}
