import { onCleanup, onMount } from 'solid-js'
import { useDrawn } from './drawn'

/** Unseen: as wide as the columns are on this screen, so that their widths are known in pixels. */
export function ColumnProbe() {
  const drawn = useDrawn()
  let lead!: HTMLElement
  let base!: HTMLElement
  let cell!: HTMLElement
  onMount(() => {
    const width = (element: HTMLElement) => element.getBoundingClientRect().width
    const observer = new ResizeObserver(() =>
      drawn.setWidths({ lead: width(lead), base: width(base), cell: width(cell) }),
    )
    for (const element of [lead, base, cell]) observer.observe(element)
    onCleanup(() => observer.disconnect())
  })
  return (
    <div class="probe" aria-hidden="true">
      <i ref={lead} class="lead" />
      <i ref={base} class="base" />
      <i ref={cell} class="later" />
    </div>
  )
}
